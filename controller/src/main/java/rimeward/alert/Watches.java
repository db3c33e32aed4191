package rimeward.alert;

import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Site;

/** What is followed over hours before anything is told of it. */
record Watches(TunnelModel model, FrostWatch frost, TankWatch tank, MouldWatch mould, CoverWatch cover) {
    Watches(Site site) {
        this(TunnelModel.assumed(site), new FrostWatch(), new TankWatch(), new MouldWatch(), new CoverWatch());
    }
}
