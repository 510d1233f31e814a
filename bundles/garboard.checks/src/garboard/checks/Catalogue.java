// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage;

/** All practices at hand and their checks. Immutable; refuses two checks with one id. */
public final class Catalogue {

    private final List<Practice> practices;
    private final Map<String, Check<?>> checks = new LinkedHashMap<>();
    private final Map<String, Practice> practiceOf = new LinkedHashMap<>();
    private final Map<EStructuralFeature, Set<Check<?>>> readers = new LinkedHashMap<>();

    private Catalogue(Collection<? extends Practice> practices) {
        this.practices = List.copyOf(practices);
        for (Practice practice : this.practices) {
            for (Check<?> check : practice.checks()) {
                Practice other = practiceOf.put(check.id(), practice);
                if (other != null) {
                    throw new IllegalArgumentException("Check " + check.id() + " stands in \"" + other.name() + "\" and in \""
                            + practice.name() + "\"; an id belongs to one check");
                }
                checks.put(check.id(), check);
                check.reads().forEach(
                        feature -> readers.computeIfAbsent(feature, key -> new LinkedHashSet<>()).add(check));
            }
        }
    }

    public static Catalogue of(Collection<? extends Practice> practices) {
        return new Catalogue(practices);
    }

    public static Catalogue of(Practice... practices) {
        return new Catalogue(List.of(practices));
    }

    public List<Practice> practices() {
        return practices;
    }

    /** All checks, practice by practice, each in the order of a walk through the installation. */
    public List<Check<?>> checks() {
        return List.copyOf(checks.values());
    }

    public Optional<Check<?>> find(String id) {
        return Optional.ofNullable(checks.get(id));
    }

    /** The practice that a check belongs to. */
    public Practice practiceOf(Check<?> check) {
        return practiceOf.get(check.id());
    }

    /**
     * The checks that a record is held against: those of the practices that it names, or all when it names none.
     *
     * @param practiceIds the record's choice; ids that are not at hand are left out here, see {@link #notAtHand}
     */
    public List<Check<?>> checksFor(Collection<String> practiceIds) {
        if (practiceIds.isEmpty()) {
            return checks();
        }
        var chosen = new ArrayList<Check<?>>();
        for (Practice practice : practices) {
            if (practiceIds.contains(practice.id())) {
                chosen.addAll(practice.checks());
            }
        }
        return chosen;
    }

    /** Practices that a record asks for and that no plug-in contributes: said, never passed over. */
    public List<String> notAtHand(Collection<String> practiceIds) {
        Set<String> known = new LinkedHashSet<>(practices.stream().map(Practice::id).toList());
        return practiceIds.stream().filter(id -> !known.contains(id)).toList();
    }

    /**
     * The checks whose verdict an edit of this feature can change. A part or an item that comes or goes, what an item is
     * called, an acceptance and the choice of practices can change any.
     */
    public Set<Check<?>> readersOf(EStructuralFeature feature) {
        boolean any = feature instanceof EReference || feature == GarboardPackage.Literals.COMMISSIONING_RECORD__PRACTICES
                || feature == GarboardPackage.Literals.ITEM__ID || isNameOfItem(feature)
                || feature.getEContainingClass() == GarboardPackage.Literals.ACCEPTANCE;
        return any ? Set.copyOf(checks.values()) : Set.copyOf(readers.getOrDefault(feature, Set.of()));
    }

    /** Items are called by their name in the words for places; the vessel is not. */
    private static boolean isNameOfItem(EStructuralFeature feature) {
        return "name".equals(feature.getName()) && GarboardPackage.Literals.ITEM.isSuperTypeOf(feature.getEContainingClass());
    }
}
