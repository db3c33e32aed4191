package rimeward.core.decision;

import rimeward.core.judgement.Judgement;
import rimeward.core.outlook.Outlook;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Deliveries;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * All that a law may know.
 *
 * @param dtS since the last tick, s
 * @param tunnel the tunnel as learned, or as the settings assume it
 * @param closed relays as commanded at the last tick
 * @param deliveries what the machines behind them are seen to do
 */
public record Situation(
        Site site,
        double dtS,
        Judgement judgement,
        Outlook outlook,
        TunnelModel tunnel,
        RelaySet closed,
        Deliveries deliveries) {}
