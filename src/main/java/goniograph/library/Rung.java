package goniograph.library;

import goniograph.source.Span;

/**
 * An exercise as it is done on one step: the entry's dose and conditions with the step's laid over
 * them. An exercise without a ladder has one rung, number 1.
 *
 * @param n number of the step
 * @param dose the whole dose
 * @param conditions all conditions
 * @param at where the step stands, or the entry's front matter
 */
public record Rung(int n, LocatedDose dose, Conditions conditions, Span at) {}
