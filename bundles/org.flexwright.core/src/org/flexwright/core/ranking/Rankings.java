package org.flexwright.core.ranking;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Names;
import org.flexwright.core.naming.Nearest;
import org.flexwright.core.ranking.RankOutcome.Order;
import org.flexwright.core.ranking.RankOutcome.Place;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.trial.Codes;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.RankList;
import org.flexwright.model.RankPlace;
import org.flexwright.model.Ranking;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Concordance;

/** Rankings: what people said, and what it comes to. */
public final class Rankings {
    private static final int FEW_PEOPLE = 3;

    private Rankings() {
    }

    /** The next free code: B1, B2... */
    public static String nextCode(Project project) {
        return Codes.next("B", 1, project.getRankings().stream().map(Ranking::getCode).toList());
    }

    /** Adds a ranking that is filled in; without a code it gets the next free one, without a time it is now. */
    public static Ranking add(Edit edit, Ranking ranking) {
        String free = nextCode(edit.project());
        String code = ranking.getCode() == null || ranking.getCode().isBlank() ? free : ranking.getCode().strip();
        if (edit.project().getRankings().stream().anyMatch(r -> code.equalsIgnoreCase(r.getCode()))) {
            throw refused("taken", code, free);
        }
        ranking.setCode(code);
        if (ranking.getAt() == null) {
            ranking.setAt(edit.now().truncatedTo(ChronoUnit.MINUTES));
        }
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__RANKINGS, ranking);
        return ranking;
    }

    /** Every piece that can be ranked: reference parts, then parts of trials, then control pieces. */
    public static List<Specimen> pieces(Project project) {
        List<Specimen> all = new ArrayList<>(project.getReferenceParts());
        project.getTrials().forEach(trial -> all.addAll(trial.getParts()));
        all.addAll(project.getControlPieces());
        return all;
    }

    /** Pieces that somebody ranked, in the order they came up. */
    public static List<Specimen> ranked(Ranking ranking) {
        Set<Specimen> pieces = new LinkedHashSet<>();
        ranking.getLists().forEach(list -> list.getPlaces().stream().map(RankPlace::getSpecimen).filter(s -> s != null).forEach(pieces::add));
        return List.copyOf(pieces);
    }

    /**
     * Reads an order as people type it: pieces from first to last, {@code >} or a comma between them, {@code =} between pieces that feel
     * alike. Throws RefusedException with one sentence.
     */
    public static List<List<Specimen>> read(Project project, String typed) {
        List<List<Specimen>> order = new ArrayList<>();
        Set<Specimen> seen = new LinkedHashSet<>();
        // names may hold a comma: where there is a > only that parts them
        for (String place : typed.split(typed.contains(">") ? ">" : "[,;]")) {
            List<Specimen> alike = new ArrayList<>();
            for (String word : place.split("=")) {
                if (word.isBlank()) {
                    throw refused("order.gap", typed.strip());
                }
                Specimen piece = find(project, word.strip());
                if (!seen.add(piece)) {
                    throw refused("order.twice", Names.piece(piece));
                }
                alike.add(piece);
            }
            order.add(alike);
        }
        if (seen.size() < 2) {
            throw refused("order.few");
        }
        return order;
    }

    private static Specimen find(Project project, String typed) {
        List<Specimen> all = pieces(project);
        String wanted = plain(typed);
        List<Specimen> found = all.stream().filter(p -> plain(Names.piece(p)).equals(wanted) || plain(Names.of(p)).equals(wanted)).toList();
        if (found.isEmpty()) {
            found = all.stream().filter(p -> p.getCode() != null && plain(p.getCode()).equals(wanted)).toList();
        }
        if (found.size() == 1) {
            return found.get(0);
        }
        if (found.isEmpty()) {
            List<String> near = Nearest.of(typed, all.stream().map(Names::piece).toList());
            throw near.isEmpty() ? refused("piece.none", typed) : refused("piece.near", typed, String.join(", ", near));
        }
        throw refused("piece.several", typed, found.stream().map(Names::piece).collect(Collectors.joining(", ")));
    }

    /** Blanks and slashes are alike, and so are upper and lower case. */
    private static String plain(String name) {
        return name.strip().replaceAll("[/\\s]+", "/").toLowerCase(Locale.ROOT);
    }

    /** Puts down the order one person found; an order that stood there for the same person is replaced. */
    public static RankList put(Edit edit, Ranking ranking, String who, List<List<Specimen>> order) {
        if (who == null || who.isBlank()) {
            throw refused("who.empty", code(ranking));
        }
        ranking.getLists().stream().filter(l -> who.strip().equalsIgnoreCase(l.getWho())).toList().forEach(edit::remove);
        RankList list = ModelFactory.eINSTANCE.createRankList();
        list.setWho(who.strip());
        int rank = 1;
        for (List<Specimen> alike : order) {
            for (Specimen piece : alike) {
                RankPlace place = ModelFactory.eINSTANCE.createRankPlace();
                place.setSpecimen(piece);
                place.setRank(rank);
                list.getPlaces().add(place);
            }
            rank += alike.size();
        }
        edit.add(ranking, ModelPackage.Literals.RANKING__LISTS, list);
        return list;
    }

    /** An order as it is typed: {@code T05/P1 > T07/P1 = T08/P1}. */
    public static String text(RankList list) {
        StringBuilder text = new StringBuilder();
        Integer before = null;
        for (RankPlace place : list.getPlaces().stream().filter(p -> p.getSpecimen() != null && p.getRank() != null).sorted(Comparator.comparing(RankPlace::getRank)).toList()) {
            text.append(before == null ? "" : before.equals(place.getRank()) ? " = " : " > ").append(Names.piece(place.getSpecimen()));
            before = place.getRank();
        }
        return text.toString();
    }

    /** What the ranking says. */
    public static RankOutcome outcome(Ranking ranking) {
        List<RankList> lists = ranking.getLists().stream().filter(l -> !l.getPlaces().isEmpty()).toList();
        if (lists.isEmpty()) {
            return new RankOutcome.Refused(say("empty", code(ranking)));
        }
        List<Specimen> pieces = ranked(ranking);
        if (pieces.size() < 2) {
            return new RankOutcome.Refused(say("onePiece", code(ranking)));
        }
        double[][] places = new double[lists.size()][];
        for (int i = 0; i < places.length; i++) {
            RankList list = lists.get(i);
            List<Specimen> missing = pieces.stream().filter(p -> rank(list, p).isEmpty()).toList();
            if (!missing.isEmpty()) {
                return new RankOutcome.Refused(say("missing", String.valueOf(list.getWho()), missing.stream().map(Names::piece).collect(Collectors.joining(", ")), code(ranking)));
            }
            places[i] = pieces.stream().mapToDouble(p -> rank(list, p).orElseThrow()).toArray();
        }
        return order(pieces, places);
    }

    private static Order order(List<Specimen> pieces, double[][] places) {
        double[][] ranks = Arrays.stream(places).map(Concordance::ranks).toArray(double[][]::new);
        double[] sums = new double[pieces.size()];
        for (int j = 0; j < sums.length; j++) {
            for (double[] rank : ranks) {
                sums[j] += rank[j];
            }
        }
        List<Place> order = IntStream.range(0, sums.length).boxed().sorted(Comparator.comparingDouble(j -> sums[j])).map(j -> {
            int place = 1 + (int) Arrays.stream(sums).filter(s -> s < sums[j]).count();
            int[] own = Arrays.stream(places).mapToInt(p -> 1 + (int) Arrays.stream(p).filter(other -> other < p[j]).count()).toArray();
            return new Place(pieces.get(j), place, Arrays.stream(own).min().orElseThrow(), Arrays.stream(own).max().orElseThrow(), (int) Arrays.stream(own).filter(r -> r == 1).count());
        }).toList();
        return new Order(places.length, order, Concordance.of(places));
    }

    private static Optional<Integer> rank(RankList list, Specimen piece) {
        return list.getPlaces().stream().filter(p -> p.getSpecimen() == piece && p.getRank() != null).map(RankPlace::getRank).findFirst();
    }

    /** What an order says, a sentence each. */
    public static List<String> sentences(Ranking ranking, Order order) {
        List<String> said = new ArrayList<>();
        if (order.people() == 1) {
            said.add(say("says.one").text());
        } else if (order.agreement().isEmpty()) {
            said.add(say("says.alike", String.valueOf(order.people())).text());
        } else {
            Concordance agreement = order.agreement().get();
            String p = Double.isNaN(agreement.p()) ? say("says.unknown").text() : agreement.p() < 0.001 ? "< 0.001" : FieldText.fixed(agreement.p(), agreement.p() < 0.1 ? 3 : 1);
            said.add(say(order.agreed() ? "says.agreed" : "says.chance", String.valueOf(order.people()), FieldText.fixed(agreement.w(), 1), p, say(agreement.exact() ? "says.counted"
                    : "says.approximate").text()).text());
        }
        if (order.people() > 1 && order.people() < FEW_PEOPLE) {
            said.add(say("says.few", String.valueOf(order.people())).text());
        }
        if (!Boolean.TRUE.equals(ranking.getBlind())) {
            said.add(say(ranking.getBlind() == null ? "says.blindUnknown" : "says.seen").text());
        }
        return said;
    }

    private static String code(Ranking ranking) {
        return ranking.getCode() == null ? say("ranking").text() : ranking.getCode();
    }

    private static Message say(String key, Object... args) {
        return Message.of(Rankings.class, key, args);
    }

    private static RefusedException refused(String key, Object... args) {
        return new RefusedException(say(key, args));
    }
}
