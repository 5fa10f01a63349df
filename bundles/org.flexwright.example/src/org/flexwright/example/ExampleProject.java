package org.flexwright.example;

import java.nio.file.Path;

import org.flexwright.core.registry.Registries;
import org.flexwright.core.search.SavedSearches;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;

/**
 * The invented example: a tactile dome for an accessible hand switch. Built by code through the same functions as a person's project, so
 * that it cannot rot. Every figure in it is invented and says so; forces follow the force scale of the example's dome (own computation of
 * a thick-wall axisymmetric shell).
 */
public final class ExampleProject {
    /** Name of the folder it is usually built in. */
    public static final String FOLDER_NAME = "tactile-dome" + ProjectStore.SUFFIX;

    private final Registries registries;
    private final String programVersion;

    /** With everything the plugins brought; the three routes must be among it. */
    public ExampleProject(Registries registries, String programVersion) {
        this.registries = registries;
        this.programVersion = programVersion;
    }

    /** True when the routes it tells of are here. */
    public boolean possible() {
        return registries.findProcessKind(Story.CAST).isPresent() && registries.findProcessKind(Story.VAT).isPresent()
                && registries.findProcessKind(Story.FILAMENT).isPresent();
    }

    /** Builds it in a folder that does not exist yet. Throws StoreException when it cannot be written. */
    public void build(Path folder) {
        Bench.StoryClock clock = new Bench.StoryClock();
        clock.at("2026-02-02T09:00");
        ProjectStore store = new ProjectStore(new StoreContext(ModelThread.current(), clock, "maker (invented)", programVersion,
                registries.packages()));
        try (ProjectSession session = store.create(folder, "Tactile dome for an accessible hand switch")) {
            Bench bench = new Bench(registries, clock);
            bench.open(session);
            Story story = new Story(bench);
            story.job();
            story.stock();
            story.reference();
            Measuring measuring = new Measuring(bench, story);
            measuring.gaugeStudy();
            story.targets();
            VatAndFilamentTrials prints = new VatAndFilamentTrials(bench, story);
            CastTrials casts = new CastTrials(bench, story);
            prints.vat();
            casts.tell();
            prints.filament();
            casts.secondDay();
            measuring.spots();
            measuring.curves();
            measuring.density();
            measuring.ranking();
            measuring.ageing();
            session.execute("Save a search", edit -> SavedSearches.save(edit, "Snaps, 40 to 50 A", "trials snapped 40-50 A"));
            session.save();
        }
    }
}
