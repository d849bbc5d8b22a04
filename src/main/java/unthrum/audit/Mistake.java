package unthrum.audit;

import java.util.List;

/** What can be wrong with a job: what follows from it, and the remedies in the order of their effort. */
public enum Mistake {
    LAYER_WHERE_NONE_MAY_BE("a layer lies where none may be",
            "What the place is for is hindered, or the layer does nothing there",
            "cut it back clear of the place", "take the layer off"),
    STOPS_SHORT_UNKNOWN("nobody says whether the layers stop short of what must stay bare",
            "A clip, a bolt or a drain may lie under a layer that nobody can see through",
            "write down what the layers lie over, or 'none'", "lift an edge and look"),
    LIMIT_BROKEN("a layer is beyond a limit of its place",
            "It will not do its work there for long, or hinders what is around it",
            "measure what the limit rests on, where that was assumed", "fit a material that keeps the limit"),
    COVERS_TOO_MUCH("more is covered than brings anything",
            "The further pieces weigh and cost, and the panel hardly gets quieter",
            "leave it, and keep the rest of the pack for the next panel"),
    USELESS_ALONE("a layer lies without its companion",
            "Without the other it weighs and costs for next to nothing",
            "fit the companion", "take the layer off"),
    COVERED_BEFORE_READY("a layer lies on a panel that had to wait",
            "The layer comes off, or hides what goes on under it",
            "prove that the obstacle was dealt with first", "take the layer off, cure what is under it, fit anew"),
    NOT_MEASURED("something that decides was never measured, or never looked for",
            "What was planned rests on a guess, and so does what was fitted",
            "look or measure now, and write the answer into the survey", "lift an edge and look"),
    WANTED_LAYER_MISSING("a planned layer is not there",
            "The panel goes on as it was bare",
            "write an overrule with the reason, if it was meant", "fit the layer"),
    COVERS_TOO_LITTLE("less is covered than was planned",
            "The panel is treated in part and heard in part",
            "add a piece beside the one that is there"),
    COVERAGE_UNKNOWN("nobody says how much is covered",
            "The gain and the added mass are guesses",
            "measure the pieces and write down the share"),
    NOTHING_ASKS_FOR_IT("a layer lies where nothing asks for one",
            "It weighs and costs, and no aim of the client is served",
            "write why it is there", "take it off"),
    DIFFERS_FROM_PLAN("it was fitted otherwise than planned, and nobody wrote why",
            "The next person cannot tell a decision from a slip",
            "write 'differs because' on the panel"),
    NOT_FINISHED("nobody says that the job is finished",
            "What is not told yet cannot be told from what was forgotten",
            "write the last day of the work under 'finished' once all is done"),
    NOT_RECORDED("nobody says what was fitted",
            "Nothing on the panel can be judged",
            "write down the layers of the panel, or 'none'"),
    WORK_NOT_DONE("work that must be done was not done",
            "What the work prevents will happen",
            "do the work, and write down who did it and when"),
    TOUCHES("what moves there touches what was fitted",
            "A pedal, a latch or a pane that is held up fails when it is needed, and may hurt somebody",
            "do not drive the vehicle", "cut back whatever is touched, and try the whole travel again"),
    WORK_NOT_PROVEN("nothing shows that work was done",
            "Nobody can tell later whether it was",
            "write who did it and when, with a photograph or a measurement where one is asked for",
            "open the place and look"),
    STILL_RINGS("a treated bay still rings",
            "The treatment does not reach the metal, or too little of it lies there",
            "roll the piece again", "add a piece in the middle of the bay"),
    TRIM_STANDS_OFF("the trim did not go back as it was",
            "It rattles, or breaks its clips",
            "find the thick spot and cut it out", "fit a thinner layer"),
    OVER_THE_JOBS_LIMIT("the job is over a limit of the whole vehicle",
            "The vehicle carries less, or the client pays more, than was agreed",
            "agree it with the client in writing", "take off what serves least"),
    OVERRULE_WITHOUT_REASON("a rule is set aside without a reason",
            "It does not count, and nobody can learn from it",
            "write why", "strike the overrule"),
    OVERRULE_NOT_ALLOWED("a rule is set aside that nobody's judgement sets aside",
            "It does not count: safety, fit and physics do not depend on a decision",
            "strike the overrule, and do what the rule says"),
    OVERRULE_POINTLESS("a rule is set aside that does not speak here",
            "The reason written no longer belongs to the facts",
            "strike the overrule", "check whether the facts of the panel are still right"),
    SIGN_OFF_STALE("something has changed since the job was signed off",
            "Nobody has signed for what is here now",
            "have it signed again with the new digest");

    private final String words;
    private final String consequence;
    private final List<String> remedies;

    Mistake(String words, String consequence, String... remedies) {
        this.words = words;
        this.consequence = consequence;
        this.remedies = List.of(remedies);
    }

    public String words() {
        return words;
    }

    public String consequence() {
        return consequence;
    }

    /** What may be done about it, the least effort first. */
    public List<String> remedies() {
        return remedies;
    }
}
