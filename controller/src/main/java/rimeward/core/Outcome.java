package rimeward.core;

import rimeward.core.decision.Decision;
import rimeward.core.guard.Guarded;
import rimeward.core.judgement.Judgement;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.watch.Deliveries;

/**
 * Everything one tick saw, thought and did: each step's value as it was handed on.
 *
 * @param outageS how long there was no controller before this tick, s; 0 where there was one
 * @param lawFailed whether the law threw or answered nonsense, so that the guard holds the floor alone
 * @param floorC the floor that was held, °C: the settings', or what the grower asked for since
 */
public record Outcome(
        Frame frame,
        double outageS,
        Judgement judgement,
        Deliveries deliveries,
        Outlook outlook,
        Decision decision,
        boolean lawFailed,
        Guarded guarded,
        double floorC) {}
