package rimeward.core.judgement;

import java.util.List;

/**
 * What is believed at one tick.
 *
 * @param tankFull whether the dryer's float says so
 * @param doorOpen whether the door contact says so
 * @param airVerdicts one for each sensor's temperature, in the site's order
 * @param rhVerdicts one for each sensor's humidity
 */
public record Judgement(
        Trust trust,
        Inside inside,
        Damp damp,
        Outside outside,
        boolean tankFull,
        boolean doorOpen,
        List<Verdict> airVerdicts,
        List<Verdict> rhVerdicts) {}
