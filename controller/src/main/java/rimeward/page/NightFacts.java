package rimeward.page;

import java.util.OptionalDouble;
import rimeward.record.FrameRow;
import rimeward.site.Site;

/** What a night's frames say that its sums do not. */
final class NightFacts {
    private final Site site;
    private final double floorC;
    private final Intervals whiles = new Intervals(this::add);
    private double lowestC = Double.POSITIVE_INFINITY;
    private int lowestSensor = -1;
    private double underFloorS;
    private double belowGuardS;

    NightFacts(Site site, double floorC) {
        this.site = site;
        this.floorC = floorC;
    }

    void add(FrameRow row) {
        whiles.add(row);
        RowView seen = new RowView(site, row);
        OptionalDouble coldestC = seen.coldestC();
        if (coldestC.isPresent() && coldestC.getAsDouble() < lowestC) {
            lowestC = coldestC.getAsDouble();
            lowestSensor = seen.coldest();
        }
    }

    private void add(FrameRow row, long fromMs, long toMs) {
        OptionalDouble coldestC = new RowView(site, row).coldestC();
        double lastedS = (toMs - fromMs) / 1000.0;
        if (coldestC.isPresent()) {
            underFloorS += coldestC.getAsDouble() < floorC ? lastedS : 0;
            belowGuardS += coldestC.getAsDouble() < floorC + site.targets().guardMarginK() ? lastedS : 0;
        }
    }

    void into(Members night) {
        if (lowestSensor >= 0) {
            night.put("lowestBench", Believed.place(site, lowestSensor));
            night.number("coldestC", lowestC, 2);
            night.number("underFloorS", underFloorS, 0).number("belowGuardS", belowGuardS, 0);
        }
    }
}
