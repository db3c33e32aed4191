package rimeward.page;

import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.NightPlan;

/** The plan of a night, and what plainer ways would take of it. */
public record Planned(NightPlan plan, Alternatives others) {}
