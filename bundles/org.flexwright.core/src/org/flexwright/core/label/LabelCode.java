package org.flexwright.core.label;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.Message;
import org.flexwright.model.Batch;
import org.flexwright.model.Entry;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;

/**
 * What stands on a label: {@code K7QM4-T-T08-X}. It finds a trial, part, lot, batch or recipe again, in its own project only, and notices when
 * it was misread. Letter case does not matter, as with all codes people type.
 *
 * @param project five signs made of the project's identity
 * @param kind    what the label is stuck on
 * @param code    its code in capitals; a part's is {@code trial/part}, a lot's {@code material/lot}, a recipe's {@code recipe/version}
 */
public record LabelCode(String project, LabelKind kind, String code) {
    private static final String PROJECT_SIGNS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final int PROJECT_LENGTH = 5;
    private static final int BITS = 5;
    /** Project, dash, letter, dash before the code; dash and check sign behind it. */
    private static final int BEFORE = PROJECT_LENGTH + 3;
    private static final int BEHIND = 2;
    /** Longest code that is still read from a small label. */
    private static final int LONGEST = 60;

    public LabelCode {
        Objects.requireNonNull(project, "project");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(code, "code");
    }

    /** The label of a trial, part, lot, batch or recipe of a project. Throws {@link LabelException} when it has no code or one that is too long. */
    public static LabelCode of(Project project, Entry thing) {
        return switch (thing) {
            case Trial trial -> of(project, LabelKind.TRIAL, trial.getCode());
            case Part part when part.eContainer() instanceof Trial trial -> of(project, LabelKind.PART, trial.getCode(), part.getCode());
            case Lot lot when lot.eContainer() instanceof MaterialGrade grade -> of(project, LabelKind.LOT, grade.getCode(), lot.getCode());
            case Batch batch -> of(project, LabelKind.BATCH, batch.getCode());
            case Recipe recipe -> of(project, LabelKind.RECIPE, recipe.getCode(), String.valueOf(recipe.getVersion()));
            default -> throw new IllegalArgumentException("No label for " + thing.eClass().getName() + ".");
        };
    }

    private static LabelCode of(Project project, LabelKind kind, String... codes) {
        for (String code : codes) {
            if (code == null || code.isBlank()) {
                throw LabelException.of(LabelException.Why.NOT_LABELLED, "unlabelled", word(kind));
            }
        }
        LabelCode label = new LabelCode(of(project), kind, String.join("/", java.util.Arrays.stream(codes).map(c -> c.strip().toUpperCase(Locale.ROOT)).toList()));
        int length = label.written().length();
        if (length > LONGEST) {
            throw LabelException.of(LabelException.Why.NOT_LABELLED, "long", word(kind), LONGEST, length);
        }
        return label;
    }

    /** The five signs of a project. */
    static String of(Project project) {
        byte[] hash;
        try {
            hash = MessageDigest.getInstance("SHA-256").digest(String.valueOf(project.getId()).getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", e);
        }
        long bits = 0;
        for (int i = 0; i < PROJECT_LENGTH; i++) {
            bits = bits << 8 | hash[i] & 0xFF;
        }
        StringBuilder signs = new StringBuilder();
        for (int i = 0; i < PROJECT_LENGTH; i++) {
            signs.append(PROJECT_SIGNS.charAt((int) (bits >> i * BITS) & 31));
        }
        return signs.toString();
    }

    /** The code as it is printed, check sign included. */
    public String text() {
        String all = project + "-" + kind.letter() + "-" + written();
        return all + "-" + CheckSign.of(all);
    }

    /** Signs a label cannot hold are written as their bytes, {@code %C3%84}. */
    private String written() {
        StringBuilder text = new StringBuilder();
        code.codePoints().forEach(c -> {
            if (c != '%' && c < 128 && CheckSign.SIGNS.indexOf(c) >= 0) {
                text.appendCodePoint(c);
            } else {
                for (byte b : Character.toString(c).getBytes(StandardCharsets.UTF_8)) {
                    text.append('%').append(String.format(Locale.ROOT, "%02X", b));
                }
            }
        });
        return text.toString();
    }

    /** Reads a code that was typed or scanned. Throws {@link LabelException}: no code, or damaged. */
    public static LabelCode parse(String typed) {
        String text = typed == null ? "" : typed.strip().toUpperCase(Locale.ROOT);
        if (text.length() <= BEFORE + BEHIND || !CheckSign.known(text) || text.charAt(PROJECT_LENGTH) != '-' || text.charAt(BEFORE - 1) != '-'
                || text.charAt(text.length() - BEHIND) != '-' || !text.substring(0, PROJECT_LENGTH).chars().allMatch(Character::isLetterOrDigit)) {
            throw LabelException.of(LabelException.Why.NO_CODE, "none", shortened(typed));
        }
        String all = text.substring(0, text.length() - BEHIND);
        Optional<LabelKind> kind = LabelKind.of(text.charAt(BEFORE - 2));
        Optional<String> code = read(all.substring(BEFORE));
        if (CheckSign.of(all) != text.charAt(text.length() - 1) || kind.isEmpty() || code.isEmpty()) {
            throw LabelException.of(LabelException.Why.DAMAGED, "damaged", text);
        }
        return new LabelCode(text.substring(0, PROJECT_LENGTH), kind.get(), code.get());
    }

    private static String shortened(String typed) {
        String text = typed == null ? "" : typed.strip();
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "\u2026";
    }

    /** The code behind its written form; empty when the bytes in it are none. */
    private static Optional<String> read(String written) {
        java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c != '%') {
                bytes.write(c);
            } else if (i + 2 < written.length() && Character.digit(written.charAt(i + 1), 16) >= 0 && Character.digit(written.charAt(i + 2), 16) >= 0) {
                bytes.write(Integer.parseInt(written.substring(i + 1, i + 3), 16));
                i += 2;
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(bytes.toString(StandardCharsets.UTF_8));
    }

    /** What the label is stuck on. Throws {@link LabelException}: of another project, or no longer there. */
    public Entry find(Project in) {
        if (!project.equals(of(in))) {
            throw LabelException.of(LabelException.Why.OTHER_PROJECT, "other", text(), of(in));
        }
        Optional<? extends Entry> found = switch (kind) {
            case TRIAL -> one(in.getTrials(), Trial::getCode, code);
            case PART -> in.getTrials().stream().flatMap(t -> t.getParts().stream()).filter(p -> same(in, p)).findFirst();
            case LOT -> in.getGrades().stream().flatMap(g -> g.getLots().stream()).filter(l -> same(in, l)).findFirst();
            case BATCH -> one(in.getBatches(), Batch::getCode, code);
            case RECIPE -> in.getRecipes().stream().filter(r -> same(in, r)).findFirst();
        };
        return found.orElseThrow(() -> LabelException.of(LabelException.Why.GONE, "gone", text(), word(kind), code));
    }

    /** The trial that the label leads to: its own, or that of its part; empty for lots, batches and recipes. Throws {@link LabelException} as {@link #find}. */
    public Optional<Trial> trial(Project in) {
        return switch (find(in)) {
            case Trial trial -> Optional.of(trial);
            case Part part -> Optional.of((Trial) part.eContainer());
            default -> Optional.empty();
        };
    }

    private static <T extends EObject> Optional<T> one(List<T> all, Function<T, String> code, String wanted) {
        return all.stream().filter(x -> code.apply(x) != null && code.apply(x).strip().toUpperCase(Locale.ROOT).equals(wanted)).findFirst();
    }

    private boolean same(Project in, Entry thing) {
        try {
            return of(in, thing).code.equals(code);
        } catch (LabelException e) {
            return false;
        }
    }

    private static String word(LabelKind kind) {
        return Message.of(LabelCode.class, "kind." + kind.name().toLowerCase(Locale.ROOT)).text();
    }
}
