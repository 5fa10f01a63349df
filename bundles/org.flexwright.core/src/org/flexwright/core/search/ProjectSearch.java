package org.flexwright.core.search;

import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.SessionListener;
import org.flexwright.model.Identified;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;

/**
 * Search over everything in an open project. Reading the project happens on the model thread, in slices as long as the caller can bear, and
 * goes on after each edit, undo and redo with what they touched; asking is possible on any thread at any time, also while there is still
 * something to read.
 */
public final class ProjectSearch implements SessionListener, AutoCloseable {
    private final ProjectSession session;
    private final CardReader reader;
    private final QueryReader queries;
    private final CardIndex index = new CardIndex();
    private final Deque<String> waiting = new ArrayDeque<>();
    private final Set<String> awaited = new HashSet<>();
    /** Names used in cards: who has to be read again when the thing of that id changes. */
    private final Map<String, Set<String>> users = new HashMap<>();
    private final Map<String, List<String>> usedBy = new HashMap<>();
    private volatile int unread;

    /** Begins with a project; nothing is read yet. On the model thread. */
    public ProjectSearch(ProjectSession session, Registries registries, Clock clock) {
        this.session = session;
        UnitWords units = new UnitWords();
        this.reader = new CardReader(registries, clock.getZone(), units);
        this.queries = new QueryReader(registries, units, clock);
        // the newest trials first: they are most often looked for
        CardReader.things(session.project()).reversed().forEach(thing -> await(CardReader.id(thing)));
        session.addListener(this);
    }

    /** Reads for about so long; true when nothing is left to read. On the model thread. */
    public boolean readFor(long nanos) {
        long end = System.nanoTime() + nanos;
        do {
            String id = waiting.poll();
            if (id == null) {
                return true;
            }
            awaited.remove(id);
            unread = waiting.size();
            read(id);
        } while (System.nanoTime() < end);
        return waiting.isEmpty();
    }

    /** Reads all there is. On the model thread. */
    public ProjectSearch readAll() {
        while (!readFor(Long.MAX_VALUE / 2)) {
            continue;
        }
        return this;
    }

    private void read(String id) {
        forget(id);
        Optional<EObject> thing = session.find(id).filter(found -> ThingKind.of(found).isPresent());
        if (thing.isEmpty()) {
            index.remove(id);
            return;
        }
        Card card = reader.read(thing.get());
        usedBy.put(id, card.uses);
        card.uses.forEach(used -> users.computeIfAbsent(used, u -> new HashSet<>()).add(id));
        index.put(card);
    }

    private void forget(String id) {
        List<String> before = usedBy.remove(id);
        if (before != null) {
            before.forEach(used -> users.computeIfPresent(used, (u, those) -> those.remove(id) && those.isEmpty() ? null : those));
        }
    }

    private void await(String id) {
        if (!id.isEmpty() && awaited.add(id)) {
            waiting.add(id);
            unread = waiting.size();
        }
    }

    /** How many things have still to be read. */
    public int unread() {
        return unread;
    }

    /** How many things can be found. */
    public int size() {
        return index.size();
    }

    List<Card> cards() {
        return index.cards();
    }

    /** Finds what is asked for, at most so many hits in detail. On any thread. */
    public Answer find(String typed, int most) {
        return index.find(queries.read(typed), most, unread);
    }

    @Override
    public void changed(Set<EObject> touched) {
        touched.forEach(this::touched);
    }

    private void touched(EObject object) {
        // the thing around it, and everything around that whose name may have changed for others
        for (EObject at = object; at != null && !(at instanceof Project); at = at.eContainer()) {
            renamed(at);
            if (ThingKind.of(at).isPresent()) {
                await(CardReader.id(at));
            }
        }
        if (object instanceof Project) {
            await(CardReader.id(object));
            return;
        }
        // what came or went brings its contents along
        for (Iterator<EObject> inside = EcoreUtil.getAllProperContents(object, false); inside.hasNext();) {
            renamed(inside.next());
        }
        if (object instanceof Identified root && (object.eContainer() == null || object.eContainer() instanceof Project)) {
            await(root.getId() == null ? "" : root.getId());
        }
        if (object instanceof MaterialGrade grade) {
            grade.getLots().forEach(lot -> await(CardReader.id(lot)));
        }
    }

    private void renamed(EObject object) {
        if (object instanceof Identified named && named.getId() != null) {
            Set<String> those = users.get(named.getId());
            if (those != null) {
                Set.copyOf(those).forEach(this::await);
            }
        }
    }

    /** Ends; the index is given up. */
    @Override
    public void close() {
        session.removeListener(this);
    }
}
