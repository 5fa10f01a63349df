package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Durometer readings by commands: both ways to print them, how they were read, other scales on request, a map of spots. */
class DurometerTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void pieces() throws Exception {
        bench = new Bench(folder);
        bench.ok("project", "new", "dome.flexwright", "--title", "Dome");
        bench.ok("trial", "new", "--route", "cast", "--title", "first pour");
        bench.ok("trial", "part", "T01", "--code", "P1", "--thickness", "6.5mm");
        bench.ok("trial", "part", "T01", "--code", "P2", "--thickness", "6.5mm");
    }

    @Test
    void bothPrintsAreStoredOnceAndTheDoubtfulIsAsked() {
        Bench.Run read = bench.ok("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "A/15:45;A/46/15;44", "--json");
        assertEquals(45, read.likely("median"));
        assertEquals(15, read.likely("dwell"));
        Bench.Run asked = bench.run("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "A/30/15");
        assertEquals(2, asked.status());
        assertTrue(asked.err().contains("A/15:30") && asked.err().contains("A/30:15"), asked.err());
        Bench.Run other = bench.run("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "D/15:45");
        assertTrue(other.status() == 2 && other.err().contains("never converted"), other.err());
        assertEquals(30, bench.ok("trial", "read", "T01", "--part", "P1", "--property", "shore-000", "--readings", "30", "--dwell", "1s", "--json").likely("median"));
    }

    @Test
    void howItWasReadIsHeldAgainstTheStandard() {
        bench.ok("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "45;46;44;45;45", "--dwell", "3s", "--set", "rule=iso-48-4", "--set", "edge=9mm");
        bench.ok("trial", "read", "T01", "--part", "P2", "--property", "shore-a", "--readings", "45;46;44;45;45", "--dwell", "3s");
        String said = bench.ok("trial", "how-read", "T01", "--part", "P1").out();
        assertTrue(said.contains("Read by: ISO 48-4") && said.contains("9 mm to the edge: ISO 48-4:2018 asks for 12 mm"), said);
        assertFalse(said.contains("≈"), "other scales are told on request alone");
        assertTrue(bench.ok("trial", "how-read", "T01", "--part", "P1", "--about").out().contains("≈ 88 ± 5 Shore 00"));
        bench.ok("trial", "how-read", "T01", "--set", "edge=13mm", "--set", "spacing=6mm");
        String mended = bench.ok("trial", "how-read", "T01").out();
        assertFalse(mended.contains("to the edge:"), mended);
        Bench.Run far = bench.run("trial", "how-read", "T01", "--set", "plies=40");
        assertTrue(far.status() == 2 && far.err().contains("from 1 to 20"), far.err());
        assertEquals(2, bench.run("trial", "read", "T01", "--part", "P1", "--property", "mass", "--readings", "2g", "--set", "plies=2").status());
    }

    @Test
    void aMapShowsTheSpotsThatWereRead() throws Exception {
        bench.ok("map", "add", "--title", "hard spots", "--sketch", "dome-top");
        assertEquals(2, bench.run("map", "spot", "hard spots", "crown", "--across", "1.5", "--down", "0.5").status());
        bench.ok("map", "spot", "hard spots", "crown", "--across", "0.5", "--down", "0.5");
        bench.ok("map", "spot", "hard spots", "wall", "--across", "0.7", "--down", "0.3");
        bench.ok("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "A/3:45;46;44", "--spot", "crown");
        bench.ok("trial", "read", "T01", "--part", "P2", "--property", "shore-a", "--readings", "A/3:47;46;48", "--spot", "crown");
        String map = bench.ok("map", "show", "hard spots", "--svg", "spots.svg").out();
        assertTrue(map.contains("crown: 46 Shore A, median of 2 pieces from 45 to 47") && map.contains("[46]") && map.contains("wall: not read"), map);
        assertTrue(Files.readString(folder.resolve("spots.svg")).contains(">46<"));
        assertEquals(2, bench.run("map", "show", "hard spots", "--dwell", "15s").status());
        bench.ok("report", "--out", "r.html");
        assertTrue(Files.readString(folder.resolve("r.html")).contains("Spot map: hard spots"));
    }

    @Test
    void readingsAfterSeveralDwellsGiveTheFallAndTheModulusSaysItsWay() {
        for (String print : new String[] {"A/1:62", "A/3:60.5", "A/15:58", "A/60:56"}) {
            bench.ok("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", print, "--spot", "crown");
        }
        Bench.Run step = bench.ok("trial", "step", "T01", "read", "--json");
        assertEquals(3.4, step.likely("fall1"));
        assertTrue(bench.ok("trial", "step", "T01", "read").out().contains("Modulus from the hardness of P1, after 1 s"));
        assertTrue(bench.ok("trial", "curves", "T01").out().contains("Shore A while the gauge rests"));
        Bench.Run coupon = bench.ok("calc", "run", "testing.coupon-modulus", "--json");
        assertTrue(coupon.likely("modulus") > 1.8 && coupon.likely("modulus") < 2.2);
    }
}
