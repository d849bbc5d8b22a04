package unthrum.survey;

/** What holds a hinged lid up. */
public enum Holder {
    SPRINGS, STRUTS, PROP
}
