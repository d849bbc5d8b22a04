package unthrum.knowledge;

import java.util.List;
import java.util.Optional;
import unthrum.reading.Quantity;
import unthrum.survey.Zone;

/**
 * How a fact of the survey is found on the vehicle, and whether a fitter can make it another one.
 *
 * @param fact    the survey's own key
 * @param called  its name in a sentence: after its value for a number ('9 mm clearance'), with an article for a word
 * @param measure how to find it out
 * @param change  how to change it; absent when nobody does
 * @param goes    which way a change moves a number; absent for words
 * @param step    the finest difference that a fitter reads; absent for words
 * @param least   the least value that is plausible; absent for words
 * @param most    the greatest value that is plausible; absent for words
 * @param errs    how far two honest measurements of it may lie apart; absent for words
 * @param judged  whether two people may find different words for it
 */
public record Measuring(String fact, String called, String measure, Optional<String> change, Optional<Way> goes,
                        Optional<Quantity> step, Optional<Quantity> least, Optional<Quantity> most,
                        Optional<Quantity> errs, Optional<Boolean> judged, String source) {

    /** Which way a number can be moved. */
    public enum Way { UP, DOWN }

    record File(List<Measuring> measuring, List<Reckoned> places) {
    }

    /** Parts and sources that are to be reckoned with in some zones only. */
    record Reckoned(List<String> parts, List<Zone> zones) {
    }

    /** Whether a fitter can make it another word. */
    public boolean canChange() {
        return change.isPresent();
    }

    /** Whether a fitter can move the number that way: a shield cools a panel, and nothing that he does heats it. */
    public boolean canMove(boolean upward) {
        return change.isPresent() && goes.stream().allMatch(way -> upward == (way == Way.UP));
    }

    /** Whether it is a number on a scale rather than a word. */
    public boolean isScale() {
        return step.isPresent();
    }
}
