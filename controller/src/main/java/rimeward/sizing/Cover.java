package rimeward.sizing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What covers a tunnel, and what a square metre of it loses with standard surfaces, still sky and no wind to speak of, W/(m² K). The
 * simulator's covers lose the same; a test holds the two together.
 */
public enum Cover {
    SINGLE_FILM(6.8, Cover.PRACTICE),
    DOUBLE_FILM(0.7 * Cover.BTU_PER_H_FT2_F, "a structure maker's worked example, 0.7 Btu/(h ft² °F)"),
    BUBBLE_LINED_FILM(3.6, Cover.PRACTICE),
    TWIN_WALL(0.53 * Cover.BTU_PER_H_FT2_F, "a structure maker's worked example, 0.53 Btu/(h ft² °F)"),
    GLASS(6.2, Cover.PRACTICE);

    private static final String PRACTICE = "common practice, no source";

    /** One Btu/(h ft² °F) in W/(m² K), from the international table Btu and the international foot. */
    private static final double BTU_PER_H_FT2_F = 5.678263341;

    private final double lossWPerM2K;
    private final String source;

    Cover(double lossWPerM2K, String source) {
        this.lossWPerM2K = lossWPerM2K;
        this.source = source;
    }

    public double lossWPerM2K() {
        return lossWPerM2K;
    }

    public String source() {
        return source;
    }

    /** Resistance that a lining of bubble film adds, m² K/W: what makes lined film of single film. */
    static double bubbleM2KPerW() {
        return 1 / BUBBLE_LINED_FILM.lossWPerM2K - 1 / SINGLE_FILM.lossWPerM2K;
    }

    /** Resistance that a second film with air between adds, m² K/W: what makes double film of single film. */
    static double secondFilmM2KPerW() {
        return 1 / DOUBLE_FILM.lossWPerM2K - 1 / SINGLE_FILM.lossWPerM2K;
    }

    /** As people write it, such as {@code single-film}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Cover> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    public static String words() {
        return Arrays.stream(values()).map(Cover::word).collect(Collectors.joining(", "));
    }
}
