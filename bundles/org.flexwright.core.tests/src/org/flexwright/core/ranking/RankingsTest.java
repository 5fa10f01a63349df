package org.flexwright.core.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.flexwright.core.field.OpenProject;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.Ranking;
import org.flexwright.model.ReferencePart;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RankingsTest {
    @TempDir
    Path temp;
    private ProjectSession session;
    private Ranking ranking;

    @BeforeEach
    void open() {
        session = OpenProject.in(temp);
        ranking = ModelFactory.eINSTANCE.createRanking();
        ReferencePart worn = ModelFactory.eINSTANCE.createReferencePart();
        worn.setCode("R0");
        worn.setName("Dome, worn");
        session.execute("test", edit -> {
            for (String code : new String[] { "P1", "P2", "P3" }) {
                Part part = ModelFactory.eINSTANCE.createPart();
                part.setCode(code);
                edit.add(edit.project().getTrials().get(0), ModelPackage.Literals.TRIAL__PARTS, part);
            }
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__REFERENCE_PARTS, worn);
            Rankings.add(edit, ranking);
        });
    }

    @Test
    void ordersAreTypedReadAndShownAlike() {
        put("Ana", "t1/p2 > R0 = T1 P1 > P3");
        assertEquals("T1/P2 > R0 = T1/P1 > T1/P3", Rankings.text(ranking.getLists().get(0)));
        put("ana", "P1 > P2 > P3 > R0");
        assertEquals(1, ranking.getLists().size(), "her second order replaces her first");
        assertEquals("R0", Names.piece(Rankings.read(session.project(), "dome, worn > P1").get(0).get(0)), "a name may hold a comma");
        assertEquals(3, Rankings.read(session.project(), "P1, P2; P3").size());
        assertRefused("twice", "P1 > P2 > P1");
        assertRefused("no piece \"P9\"", "P1 > P9");
        assertRefused("without a piece", "P1 > > P2");
        assertRefused("two pieces or more", "P1");
    }

    @Test
    void severalPeopleMakeAnOrderWithoutDecimals() {
        for (String who : new String[] { "Ana", "Ben", "Cy", "Dot" }) {
            put(who, who.equals("Dot") ? "R0 > P1 = P2 > P3" : "R0 > P1 > P2 > P3");
        }
        RankOutcome.Order order = assertInstanceOf(RankOutcome.Order.class, Rankings.outcome(ranking));
        assertTrue(order.agreed());
        assertEquals(4, order.places().get(0).first());
        assertEquals("T1/P1", Names.piece(order.places().get(1).piece()));
        assertEquals(2, order.places().get(2).best(), "Dot found the second and third alike");
        String all = String.join(" ", Rankings.sentences(ranking, order));
        assertTrue(all.contains("4 people agree more than chance does") && all.contains("not noted"), all);
        assertFalse(all.matches("(?s).*\\d\\.\\d{4}.*"), all);
    }

    @Test
    void onePersonAndMissingPieces() {
        assertTrue(assertInstanceOf(RankOutcome.Refused.class, Rankings.outcome(ranking)).sentence().text().contains("no order yet"));
        put("Ana", "P1 > P2");
        RankOutcome.Order order = assertInstanceOf(RankOutcome.Order.class, Rankings.outcome(ranking));
        assertTrue(order.agreement().isEmpty());
        assertTrue(Rankings.sentences(ranking, order).get(0).contains("no agreement to speak of"));
        put("Ben", "P1 > P2 > P3");
        assertTrue(assertInstanceOf(RankOutcome.Refused.class, Rankings.outcome(ranking)).sentence().text().startsWith("Ana did not place T1/P3"));
    }

    private void put(String who, String typed) {
        var order = Rankings.read(session.project(), typed);
        session.execute("test", edit -> Rankings.put(edit, ranking, who, order));
    }

    private void assertRefused(String words, String typed) {
        String sentence = assertThrows(RefusedException.class, () -> Rankings.read(session.project(), typed)).getMessage();
        assertTrue(sentence.contains(words), sentence);
    }
}
