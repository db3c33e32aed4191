package rimeward.alert;

import java.util.function.Supplier;
import rimeward.core.tunnel.LossStanding;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Site;

/** What is followed over hours before anything is told of it. */
record Watches(TunnelModel model, FrostWatch frost, TankWatch tank, MouldWatch mould, CoverWatch cover, LossNews loss) {
    Watches(Site site, Supplier<LossStanding> heatLoss) {
        this(
                TunnelModel.assumed(site),
                new FrostWatch(),
                new TankWatch(),
                new MouldWatch(),
                new CoverWatch(),
                new LossNews(heatLoss));
    }

    /** All that was followed goes on, at the same place with another floor or a tunnel that is better known. */
    Watches at(Site site) {
        return new Watches(TunnelModel.assumed(site), frost, tank, mould, cover, loss);
    }
}
