package rimeward.sim.run;

import rimeward.core.decision.ControlLaw;

/** A law and how it is called. */
public record LawChoice(LawLabel label, ControlLaw law) {}
