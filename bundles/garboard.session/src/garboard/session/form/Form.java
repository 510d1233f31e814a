// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage.Literals;
import garboard.session.Stop;

/**
 * All fields of the model, each at one stop. What {@code form.txt} does not name, because it is newer, comes in a last group of the stop
 * where its key leads. Not filled in by hand and therefore nowhere: the version of the format, ids, pictures' bytes, the verdicts kept with
 * a signature, and what could not be read.
 */
public final class Form {

    private static final Set<EStructuralFeature> NOT_BY_HAND = Set.of(Literals.COMMISSIONING_RECORD__FORMAT_VERSION,
        Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES, Literals.ITEM__ID, Literals.PHOTOGRAPH__DATA, Literals.PHOTOGRAPH__MEDIA_TYPE,
        Literals.SIGNATURE__VERDICTS);

    private final Map<Stop, List<FormGroup>> stops = new LinkedHashMap<>();
    private final Map<EClass, ItemForm> items = new LinkedHashMap<>();

    Form(Map<Stop, List<FormGroup>> named, Map<EClass, ItemForm> namedItems) {
        named.forEach((stop, groups) -> stops.put(stop, new ArrayList<>(groups)));
        addOthers(named);
        namedItems.forEach((type, form) -> items.put(type, completed(type, form)));
    }

    /** {@return the form as {@code form.txt} has it, completed from the model} */
    public static Form read() {
        return FormFile.read();
    }

    /** {@return the groups at a stop, their paths beginning at the record} */
    public List<FormGroup> at(Stop stop) {
        return List.copyOf(stops.getOrDefault(stop, List.of()));
    }

    /** {@return how items of a class are shown} */
    public ItemForm of(EClass type) {
        return items.computeIfAbsent(type, Form::fromModel);
    }

    /** {@return whether a feature is filled in by hand} */
    static boolean isByHand(EStructuralFeature feature) {
        return !NOT_BY_HAND.contains(feature)
            && (feature instanceof EAttribute || feature instanceof EReference reference && reference.isContainment());
    }

    private void addOthers(Map<Stop, List<FormGroup>> named) {
        Set<List<? extends EStructuralFeature>> placed = new HashSet<>();
        named.values().forEach(groups -> placed.addAll(paths(groups)));
        Map<Stop, List<FormEntry>> others = new LinkedHashMap<>();
        for (FormEntry entry : entries(Literals.COMMISSIONING_RECORD, List.of())) {
            if (entry.paths().stream().noneMatch(placed::contains)) {
                List<? extends EStructuralFeature> path = entry.paths().getFirst();
                String key = String.join(".", path.stream().map(EStructuralFeature::getName).toList());
                others.computeIfAbsent(Stop.of(key), stop -> new ArrayList<>()).add(entry);
            }
        }
        others.forEach((stop, entries) -> stops.computeIfAbsent(stop, none -> new ArrayList<>())
            .add(new FormGroup(FormGroup.OTHERS, Optional.empty(), false, entries)));
    }

    private static ItemForm completed(EClass type, ItemForm form) {
        Set<List<? extends EStructuralFeature>> placed = new HashSet<>(paths(form.groups()));
        if (form.groups().isEmpty()) {
            placed.addAll(form.columns());
        }
        List<FormEntry> others = entries(type, List.of()).stream().filter(entry -> !placed.containsAll(entry.paths())).toList();
        if (others.isEmpty()) {
            return form;
        }
        List<FormGroup> groups = new ArrayList<>(form.groups());
        groups.add(new FormGroup(FormGroup.OTHERS, Optional.empty(), false, others));
        return new ItemForm(form.columns(), groups);
    }

    private static ItemForm fromModel(EClass type) {
        List<List<EStructuralFeature>> columns = new ArrayList<>();
        for (FormEntry entry : entries(type, List.of())) {
            switch (entry) {
                case FormEntry.One one -> columns.add(one.path());
                case FormEntry.Place place -> columns.addAll(place.figures());
                default -> { }
            }
        }
        return completed(type, new ItemForm(columns, List.of()));
    }

    private static Set<List<? extends EStructuralFeature>> paths(List<FormGroup> groups) {
        Set<List<? extends EStructuralFeature>> paths = new HashSet<>();
        groups.forEach(group -> group.entries().forEach(entry -> paths.addAll(entry.paths())));
        return paths;
    }

    /** {@return all that is filled in by hand in a part and the single parts below it, in the order of the model} */
    static List<FormEntry> entries(EClass type, List<? extends EStructuralFeature> above) {
        List<FormEntry> entries = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (!isByHand(feature)) {
                continue;
            }
            List<EStructuralFeature> path = new ArrayList<>(above);
            path.add(feature);
            if (feature instanceof EAttribute) {
                entries.add(new FormEntry.One(path));
            } else if (feature.isMany()) {
                entries.add(new FormEntry.Items(references(path)));
            } else if (((EReference) feature).getEReferenceType() == Literals.POINT) {
                entries.add(new FormEntry.Place(references(path)));
            } else {
                entries.addAll(entries(((EReference) feature).getEReferenceType(), path));
            }
        }
        return entries;
    }

    static List<EReference> references(List<? extends EStructuralFeature> path) {
        return path.stream().map(EReference.class::cast).toList();
    }
}
