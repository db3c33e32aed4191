package rimeward.sizing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a grower can do against the loss, in the order in which they are counted where several are done. */
public enum Measure {
    BUBBLE_LINING("bubble film under roof and sides", Measure.LINED, Input.BUBBLE_PRICE),
    BUBBLE_LINED_ENDS("bubble film on both ends and the door", Measure.LINED, Input.BUBBLE_PRICE),
    SECOND_FILM(
            "second film over roof and sides, air between",
            "as from single to double film; a structure maker's example",
            Input.FILM_PRICE),
    SEALED_GAPS("door gaps and the film's edges sealed", "draughts halved; own choice", Input.SEALING_PRICE),
    EDGE_BOARD(
            "foam board 0.5 m into the ground all around",
            "edge's loss halved; growers' handbooks, from memory",
            Input.BOARD_PRICE),
    SMALLER_PART(
            "heat only part of the length, behind a curtain of bubble film",
            "the curtain loses as lined film does; own choice",
            Input.BUBBLE_PRICE);

    /** What sealing leaves of the air changes, and a board of the edge's loss (0.4 of 0.8 Btu/(h ft °F), from memory). Own choice. */
    private static final double SEALED_LEAVES = 0.5;

    private static final double BOARD_LEAVES = 0.5;

    private static final String LINED = "as from single to bubble-lined film; common practice, no source";

    private final String words;
    private final String source;
    private final Input price;

    Measure(String words, String source, Input price) {
        this.words = words;
        this.source = source;
        this.price = price;
    }

    public String words() {
        return words;
    }

    /** How its effect is reckoned, and whose figure that is. */
    public String source() {
        return source;
    }

    /** What it is paid by. */
    public Input price() {
        return price;
    }

    /** Whether it is bought by the square metre, or else by the metre. */
    public boolean isByArea() {
        return price == Input.BUBBLE_PRICE || price == Input.FILM_PRICE;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Measure> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    public static String wordList() {
        return Arrays.stream(values()).map(Measure::word).collect(Collectors.joining(", "));
    }

    /** Whether a tunnel so covered has it anyway. */
    boolean isPartOf(Cover cover, Cover ends) {
        return switch (this) {
            case BUBBLE_LINING -> cover == Cover.BUBBLE_LINED_FILM;
            case BUBBLE_LINED_ENDS -> ends == Cover.BUBBLE_LINED_FILM;
            case SECOND_FILM -> cover == Cover.DOUBLE_FILM || cover == Cover.TWIN_WALL;
            case SEALED_GAPS, EDGE_BOARD, SMALLER_PART -> false;
        };
    }

    /** How much of it is bought: m², or m of edge. */
    double amount(House house) {
        Areas areas = house.areas();
        return switch (this) {
            case BUBBLE_LINING, SECOND_FILM -> areas.roofAndSidesM2();
            case BUBBLE_LINED_ENDS -> areas.endsM2();
            case SEALED_GAPS, EDGE_BOARD -> areas.edgeM();
            case SMALLER_PART -> areas.endsM2() / 2;
        };
    }

    /** The tunnel once it is done. A lining adds its resistance to what is there. */
    House applyTo(House house, Shape shape, double heatedShare) {
        return switch (this) {
            case BUBBLE_LINING -> house.withCover(lined(house.coverWPerM2K(), Cover.bubbleM2KPerW()));
            case BUBBLE_LINED_ENDS -> house.withEnds(lined(house.endsWPerM2K(), Cover.bubbleM2KPerW()));
            case SECOND_FILM -> house.withCover(lined(house.coverWPerM2K(), Cover.secondFilmM2KPerW()));
            case SEALED_GAPS -> house.withAirChanges(house.airChangesPerH() * SEALED_LEAVES);
            case EDGE_BOARD -> house.withEdge(house.edgeWPerMK() * BOARD_LEAVES);
            case SMALLER_PART -> part(house, shape.withLength(shape.lengthM() * heatedShare));
        };
    }

    private static double lined(double lossWPerM2K, double addedM2KPerW) {
        return 1 / (1 / lossWPerM2K + addedM2KPerW);
    }

    /** One end becomes the curtain, which loses as lined film does: a little too much, since behind it the air is not quite outside's. */
    private static House part(House house, Shape part) {
        double curtainWPerM2K = Cover.BUBBLE_LINED_FILM.lossWPerM2K();
        return house.withAreas(part.areas()).withEnds((house.endsWPerM2K() + curtainWPerM2K) / 2);
    }
}
