package rimeward.core.decision;

import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.OutsideDamp;
import rimeward.site.Site;

/** Drying by opening up: free whenever outside air holds less water and is warm enough. */
public final class Airing {
    /** Outside must be drier by this to be worth it, kg/kg. Common practice, no source. */
    private static final double DRIER_KG_PER_KG = 0.0005;

    private static final double KEEP_KG_PER_KG = 0.0002;

    /** Inside and outside must be this far above the floor, K. Common practice, no source. */
    private static final double CLEAR_OF_FLOOR_K = 3;

    private Airing() {}

    /** Whether it helps now; once it does, it does until the difference has nearly gone. */
    public static boolean helps(Site site, Judgement judgement, boolean did) {
        return judgement.inside() instanceof Inside.Seen inside
                && judgement.damp() instanceof Damp.Seen damp
                && judgement.outside() instanceof Outside.Seen outside
                && outside.damp() instanceof OutsideDamp.Seen outsideDamp
                && outsideDamp.humidityKgPerKg() < damp.humidityKgPerKg() - (did ? KEEP_KG_PER_KG : DRIER_KG_PER_KG)
                && outside.airC() >= site.floorC() + CLEAR_OF_FLOOR_K - (did ? 0.5 : 0)
                && inside.coldestC() >= site.floorC() + CLEAR_OF_FLOOR_K - (did ? 0.5 : 0);
    }

    static Reason reason(Judgement judgement) {
        return judgement.damp() instanceof Damp.Seen damp
                        && judgement.outside() instanceof Outside.Seen outside
                        && outside.damp() instanceof OutsideDamp.Seen outsideDamp
                ? new Reason(Cause.AIRING, outsideDamp.humidityKgPerKg() * 1000, damp.humidityKgPerKg() * 1000)
                : Reason.of(Cause.NOT_ASKED);
    }
}
