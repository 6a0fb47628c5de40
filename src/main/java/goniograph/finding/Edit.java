package goniograph.finding;

import goniograph.source.Span;

/**
 * One change of a file.
 *
 * @param at what goes; an empty place where something is only put in
 * @param text what comes in its place
 */
public record Edit(Span at, String text) {}
