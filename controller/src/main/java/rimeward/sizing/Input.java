package rimeward.sizing;

import java.util.Optional;

/** Every number that the sheet rests on: its name with unit, its limits, and what is assumed where nobody says it. */
public enum Input {
    WIDTH("width_m", "m", 1, 30, "measure from side to side on the ground"),
    LENGTH("length_m", "m", 1, 200, "measure from end to end"),
    HEIGHT("height_m", "m", 0.5, 12, "measure to the highest point"),
    EAVES("eaves_m", "m", 0.2, 10, "measure where wall and roof meet, or leave it out for hoops"),
    COVER_LOSS("cover_W_per_m2K", "W/m²K", 0.3, 12, "take the maker's U-value, or leave it out and name --cover"),
    ENDS_LOSS("ends_W_per_m2K", "W/m²K", 0.3, 12, "take the maker's U-value, or leave it out and name --ends"),
    AIR_CHANGES(
            "air_changes_per_h",
            "per h",
            0.05,
            20,
            "0.5 is tight, 1.5 usual, 4 a tunnel with gaps",
            1.5,
            "a film tunnel not sealed with care; common practice, from memory"),
    EDGE_LOSS(
            "edge_W_per_mK",
            "W/mK",
            0,
            5,
            "about 1.4 bare, 0.7 with an insulating board",
            1.38,
            "0.8 Btu/(h ft °F), bare edge; growers' handbooks, from memory"),
    ALTITUDE("altitude_m", "m", -430, 4500, "height above sea level", 0, "sea level, where air is densest"),
    FLOOR("floor_C", "°C", -10, 30, "the highest of the plants' own minimums", 4, "own choice: potted citrus"),
    HOLD_ABOVE(
            "hold_above_K",
            "K",
            0,
            5,
            "how far above the floor the controller holds the air",
            1,
            "guard_margin_K 0.5 and half of differential_K 1, as in config/tunnel.toml"),
    OUTSIDE(
            "outside_C",
            "°C",
            -60,
            30,
            "the coldest night you remember there",
            -10,
            "own choice: ask what your coldest night was"),
    MARGIN(
            "margin_percent",
            "%",
            0,
            200,
            "25 is usual",
            25,
            "own choice: clear sky, wind, wet air, a weak mains, a heater that ages"),
    VOLTAGE("voltage_V", "V", 100, 480, "mains voltage", 230, "European mains"),
    FUSE("fuse_A", "A", 1, 125, "what is printed on the fuse or breaker", 13, "a plug's fuse, BS 1363; from memory"),
    CONTINUOUS(
            "continuous_factor",
            "",
            0.5,
            1,
            "share of the fuse that a load of hours may use",
            0.8,
            "continuous loads at most 80 %, NEC; from memory"),
    OTHER_LOAD(
            "other_load_W",
            "W",
            0,
            20_000,
            "what else always hangs on that circuit",
            0,
            "nothing else on that circuit"),
    PRICE("price_per_kWh", "money/kWh", 0, 1000, "take it from the bill", 0.30, "own choice: look at your bill"),
    BUBBLE_PRICE(
            "bubble_price_per_m2",
            "money/m²",
            0,
            10_000,
            "ask the shop",
            2.50,
            "own choice, clips included: ask the shop"),
    FILM_PRICE("film_price_per_m2", "money/m²", 0, 10_000, "ask the shop", 1.50, "own choice: ask the shop"),
    SEALING_PRICE(
            "sealing_price_per_m",
            "money/m",
            0,
            10_000,
            "ask the shop",
            1.50,
            "own choice, brush strip and tape: ask the shop"),
    BOARD_PRICE(
            "board_price_per_m",
            "money/m",
            0,
            10_000,
            "ask the shop",
            6.00,
            "own choice, foam board 0.5 m deep: ask the shop"),
    HEATED_SHARE(
            "heated_share",
            "of the length",
            0.1,
            0.95,
            "how much of the length would be heated behind a curtain",
            0.5,
            "own choice: half the benches would do");

    private final String key;
    private final String unit;
    private final double least;
    private final double most;
    private final String remedy;
    private final double usual;
    private final String usualFrom; // empty where nothing is usual

    Input(String key, String unit, double least, double most, String remedy) {
        this(key, unit, least, most, remedy, 0, "");
    }

    Input(String key, String unit, double least, double most, String remedy, double usual, String usualFrom) {
        this.key = key;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.remedy = remedy;
        this.usual = usual;
        this.usualFrom = usualFrom;
    }

    /** Name for programs, its unit last. */
    public String key() {
        return key;
    }

    /** Name on the command line. */
    public String option() {
        return "--" + key.replace('_', '-');
    }

    /** As people read it; {@code money} stands for the currency. */
    public String unit() {
        return unit;
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    public String remedy() {
        return remedy;
    }

    /** What is assumed where nobody says it; empty where it must be said or follows from others. */
    public Optional<Sourced> usual() {
        return usualFrom.isEmpty() ? Optional.empty() : Optional.of(new Sourced(usual, Basis.ASSUMED, usualFrom));
    }
}
