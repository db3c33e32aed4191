package rimeward.alert;

import java.util.OptionalLong;
import java.util.function.Supplier;
import rimeward.core.tunnel.LossStanding;
import rimeward.core.tunnel.LossWords;
import rimeward.site.Site;

/**
 * What the nights say of the heat loss: the slow sister of {@link CoverWatch}, which sees a tear within the hour. It is reckoned once a day
 * beside the ticks; here it is only looked at. While nobody knows, what stands is left standing.
 */
final class LossNews {
    private final Supplier<LossStanding> source;
    private LossStanding now = LossStanding.UNKNOWN;
    private OptionalLong toldSince = OptionalLong.empty();

    LossNews(Supplier<LossStanding> source) {
        this.source = source;
    }

    void look() {
        now = source.get();
    }

    /** A further change is another one: what was told is over first. */
    boolean holds(boolean more, boolean did) {
        if (now instanceof LossStanding.Unknown) {
            return did;
        }
        if (!(now instanceof LossStanding.Changed changed) || changed.change().isMore() != more) {
            return false;
        }
        long since = changed.change().sinceEpochS();
        boolean another = did && toldSince.orElse(since) != since;
        if (!another) {
            toldSince = OptionalLong.of(since);
        }
        return !another;
    }

    String text(Site site) {
        return now instanceof LossStanding.Changed changed
                ? LossWords.of(changed.change(), site.zone())
                : "The tunnel's heat loss has changed.";
    }
}
