package unthrum.built;

import unthrum.survey.Survey;

/** A survey with what was fitted. */
public record Job(Survey survey, Built built) {
}
