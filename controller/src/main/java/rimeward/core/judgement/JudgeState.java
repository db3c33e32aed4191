package rimeward.core.judgement;

import java.util.Collections;
import java.util.List;
import rimeward.site.Site;

/**
 * What the judge remembers from one tick to the next.
 *
 * @param air one for each sensor
 * @param rh one for each sensor
 * @param blindForS how long no inside temperature has been believed, s
 */
public record JudgeState(List<AirTrack> air, List<RhTrack> rh, double blindForS) {
    public static JudgeState start(Site site) {
        int sensors = site.sensors().size();
        return new JudgeState(
                Collections.nCopies(sensors, AirTrack.START), Collections.nCopies(sensors, RhTrack.START), 0);
    }
}
