package rimeward.core.order;

/**
 * What was ordered and stands until something else is ordered; machines that stand down are the guard's to remember.
 *
 * @param floor by the grower
 * @param forecast by the grower
 * @param tunnel by what was learned off the tick
 */
public record Standing(FloorOrder floor, HandedForecast forecast, KnownTunnel tunnel) {
    public static final Standing NONE =
            new Standing(FloorOrder.AS_IN_SETTINGS, HandedForecast.NONE, KnownTunnel.AS_IN_SETTINGS);

    public Standing withFloor(FloorOrder other) {
        return new Standing(other, forecast, tunnel);
    }

    public Standing withForecast(HandedForecast other) {
        return new Standing(floor, other, tunnel);
    }

    public Standing withTunnel(KnownTunnel other) {
        return new Standing(floor, forecast, other);
    }
}
