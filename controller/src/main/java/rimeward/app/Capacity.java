package rimeward.app;

import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What the machines can do on the circuit they have, by the settings' heat loss. */
record Capacity(
        double heaterW, double heaterAndDryerW, double allW, double limitW, double heaterHoldsC, double bothHoldC) {

    static Capacity of(Site site) {
        double limitW = site.circuit().limitW();
        double heaterW = 0;
        for (Machine stage : site.heater().stages()) {
            if (heaterW + stage.ratedW() > limitW) {
                break; // the guard sheds the last stages first
            }
            heaterW += stage.ratedW();
        }
        double bothW = heaterW + site.ratedW(site.dryerRelay());
        double heaterAndDryerW = bothW <= limitW ? bothW : heaterW; // in the cold the dryer is shed
        RelaySet all = site.heaterStages().or(site.dryerRelay()).or(site.ventRelay());
        TunnelModel tunnel = TunnelModel.assumed(site);
        return new Capacity(
                heaterW,
                heaterAndDryerW,
                site.ratedW(all),
                limitW,
                tunnel.capabilityC(site.floorC(), heaterW),
                tunnel.capabilityC(site.floorC(), heaterAndDryerW));
    }
}
