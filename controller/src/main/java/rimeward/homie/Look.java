package rimeward.homie;

import rimeward.core.Outcome;

/** What there is to show at one moment: the newest decision, and what was told since. */
record Look(Outcome outcome, Told told) {}
