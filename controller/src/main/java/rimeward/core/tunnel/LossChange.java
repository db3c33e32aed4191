package rimeward.core.tunnel;

/**
 * The tunnel loses more or less heat than it used to.
 *
 * @param sinceEpochS dusk of the first night of it, s since 1970 UTC; a few nights off where the change is small
 * @param percent more than before for the same weather; negative: less
 * @param leastPercent lower end of what it may be, two-sided 95 %
 * @param mostPercent upper end
 */
public record LossChange(long sinceEpochS, double percent, double leastPercent, double mostPercent) {
    public boolean isMore() {
        return percent > 0;
    }
}
