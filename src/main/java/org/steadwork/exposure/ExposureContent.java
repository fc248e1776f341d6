package org.steadwork.exposure;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exposure.method.Coupling;
import org.steadwork.exposure.method.FrequencyTable;
import org.steadwork.exposure.method.LiftingDuration;
import org.steadwork.exposure.method.LiftingEquation;
import org.steadwork.exposure.method.PrintedLifting;
import org.steadwork.exposure.method.Reba;
import org.steadwork.exposure.method.Rosa;
import org.steadwork.exposure.method.Rula;
import org.steadwork.exposure.method.ScoreTable;
import org.steadwork.exposure.method.StrainIndex;

/** Reads the tables of the published exposure methods from the content and makes the methods of them. */
public final class ExposureContent {

    private static final String FOLDER = "exposure/";

    private static final List<String> FILES = List.of("methods.yaml", "niosh-frequency.csv", "niosh-coupling.csv", "niosh-multipliers-printed.csv", "rula-a.csv",
            "rula-b.csv", "rula-c.csv", "reba-a.csv", "reba-b.csv", "reba-c.csv", "rosa-chair.csv", "rosa-factors.csv", "rosa-monitor-phone.csv",
            "rosa-mouse-keyboard.csv", "strain-index.csv");

    private ExposureContent() {
    }

    /** A mark of the tables and words as they are now, kept with a result so that it can be told which ones it rests on. */
    static String edition() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String file : FILES) {
                try (InputStream in = Content.class.getResourceAsStream("/content/" + FOLDER + file)) {
                    digest.update(in.readAllBytes());
                }
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
        } catch (IOException | NoSuchAlgorithmException e) {
            throw new IllegalStateException("The exposure tables cannot be marked", e);
        }
    }

    public static LiftingEquation lifting() {
        return new LiftingEquation(frequencies(), couplings());
    }

    public static PrintedLifting printedLifting() {
        Map<Double, Double> reach = new HashMap<>();
        for (Entry row : Content.csv(FOLDER + "niosh-multipliers-printed.csv")) {
            if (row.text("multiplier").equals("HM") && row.text("unit").equals("in")) {
                reach.put(row.number("x"), row.number("value"));
            }
        }
        return new PrintedLifting(frequencies(), couplings(), reach);
    }

    public static Rula rula() {
        return new Rula(table("rula-a.csv"), table("rula-b.csv"), table("rula-c.csv"));
    }

    public static Reba reba() {
        return new Reba(table("reba-a.csv"), table("reba-b.csv"), table("reba-c.csv"));
    }

    public static Rosa rosa() {
        return new Rosa(table("rosa-chair.csv"), table("rosa-monitor-phone.csv"), table("rosa-mouse-keyboard.csv"));
    }

    public static StrainIndex strainIndex() {
        Map<StrainIndex.Variable, double[]> multipliers = new EnumMap<>(StrainIndex.Variable.class);
        for (Entry row : Content.csv(FOLDER + "strain-index.csv")) {
            double[] five = multipliers.computeIfAbsent(row.constant("variable", StrainIndex.Variable.class), v -> new double[5]);
            int rating = row.integer("rating");
            if (rating < 1 || rating > 5 || five[rating - 1] != 0) {
                throw row.problem("'rating' must be 1 to 5, each once a variable, but is " + rating);
            }
            five[rating - 1] = row.number("multiplier");
        }
        return new StrainIndex(multipliers);
    }

    static FrequencyTable frequencies() {
        FrequencyTable table = new FrequencyTable();
        for (Entry row : Content.csv(FOLDER + "niosh-frequency.csv")) {
            if (!row.text("lifts_per_min").startsWith("gt")) {
                table.with(row.number("lifts_per_min"), row.constant("duration_class", LiftingDuration.class), low(row), row.number("fm"));
            }
        }
        return table;
    }

    private static Map<Coupling, double[]> couplings() {
        Map<Coupling, double[]> couplings = new EnumMap<>(Coupling.class);
        for (Entry row : Content.csv(FOLDER + "niosh-coupling.csv")) {
            couplings.computeIfAbsent(row.constant("coupling", Coupling.class), c -> new double[2])[low(row) ? 0 : 1] = row.number("cm");
        }
        return couplings;
    }

    private static boolean low(Entry row) {
        return switch (row.text("v_class_cm").toLowerCase(Locale.ROOT)) {
            case "lt75" -> true;
            case "ge75" -> false;
            default -> throw row.problem("'v_class_cm' must be lt75 or ge75, but is '" + row.text("v_class_cm") + "'");
        };
    }

    private static ScoreTable table(String file) {
        List<int[]> rows = Content.csv(FOLDER + file).stream().map(row -> row.keys().stream().mapToInt(row::integer).toArray()).toList();
        return ScoreTable.of(file, rows);
    }
}
