package rimeward.core.order;

/** What the grower ordered that stands until something else is ordered; machines that stand down are the guard's to remember. */
public record Standing(FloorOrder floor, HandedForecast forecast) {
    public static final Standing NONE = new Standing(FloorOrder.AS_IN_SETTINGS, HandedForecast.NONE);

    public Standing withFloor(FloorOrder other) {
        return new Standing(other, forecast);
    }

    public Standing withForecast(HandedForecast other) {
        return new Standing(floor, other);
    }
}
