package org.flexwright.core.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

import org.flexwright.core.Watch;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;

/** A program of its own that takes one of two sets of tables in, saves and makes a backup, again and again until it is killed. */
public final class ExchangeKillTarget {
    private ExchangeKillTarget() {
    }

    /** Arguments: the project's folder, two exports, a folder for archives. Says "done" after each round. */
    public static void main(String[] args) throws IOException {
        ProjectStore store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "Killed", "1.0.0", List.of()));
        try (ProjectSession s = store.open(Path.of(args[0]))) {
            for (int i = 0;; i++) {
                ImportPlan plan = TableImport.plan(s, List.of(), Path.of(args[1 + i % 2]), new ImportOptions(true, ImportOptions.Decimal.ASK, true), Watch.NONE);
                s.execute("Import", plan::apply);
                if (i % 3 == 0) {
                    s.save();
                }
                Backup.make(s.snapshot(), "1.0.0", Instant.now(), Path.of(args[3]).resolve(System.nanoTime() + ".zip"), Watch.NONE);
                System.out.println("done");
                System.out.flush();
            }
        }
    }
}
