/**
 * Floor 2: how much, how often, how long. Quantities with units, the FITT-VP dose (frequency,
 * intensity, time, type, volume, progression), its ladder, and everything that follows from them by
 * arithmetic: session, day and week time, the timetable, the rows of counters. Numbers are exact
 * decimals; nothing here knows a word of any patient language, and nothing throws on content.
 */
@NullMarked
package goniograph.dose;

import org.jspecify.annotations.NullMarked;
