package rimeward.sim.report;

import rimeward.sim.sweep.Broken;
import rimeward.sim.sweep.Quantiles;
import rimeward.sim.sweep.Spread;
import rimeward.sim.sweep.WinterLine;

/** A sweep's {@code summary.json}, for other programs; each name ends with its unit. */
public final class SweepJson {
    private final Spread spread;
    private final Json json = new Json();

    private SweepJson(Spread spread) {
        this.spread = spread;
    }

    public static String of(Spread spread) {
        return new SweepJson(spread).write();
    }

    private String write() {
        json.object(() -> {
            json.member("build", spread.build())
                    .member("daysEach", spread.days())
                    .member("winters", spread.winters())
                    .member("good", spread.isGood());
            json.name("laws")
                    .array(() ->
                            spread.standings().forEach(law -> json.element().object(() -> law(law))));
            json.name("troubles").object(() -> spread.troubles().forEach(json::member));
            json.name("failed")
                    .array(() ->
                            spread.failed().forEach(winter -> json.element().object(() -> failed(winter))));
        });
        return json.toString();
    }

    private void law(Spread.Standing law) {
        json.member("law", law.law()).member("heldWinters", law.held()).member("bothHeldWinters", law.bothHeld());
        law.dearerKWh().ifPresent(kWh -> json.member("medianMoreThanOursKWh", kWh, 3));
        law.damperH().ifPresent(dampH -> json.member("medianMoreDampThanOursH", dampH, 3));
        for (Spread.Line line : spread.lines()) {
            if (line.law().equals(law.law())) {
                json.name(line.measured().key()).object(() -> quantiles(line.spread()));
            }
        }
    }

    private void quantiles(Quantiles of) {
        json.member("least", of.least(), 3)
                .member("q05", of.q05(), 3)
                .member("q25", of.q25(), 3)
                .member("median", of.median(), 3)
                .member("q75", of.q75(), 3)
                .member("q95", of.q95(), 3)
                .member("most", of.most(), 3)
                .member("mean", of.mean(), 3);
    }

    private void failed(WinterLine winter) {
        json.member("seed", winter.seed());
        json.name("troubles")
                .array(() -> winter.troubles().forEach(name -> json.element().string(name)));
        json.name("broken")
                .array(() -> winter.broken().forEach(each -> json.element().object(() -> broken(each))));
    }

    private void broken(Broken broken) {
        json.member("property", broken.code())
                .member("firstEpochS", broken.firstEpochS())
                .member("lastedS", broken.lastedS())
                .member("text", broken.text());
    }
}
