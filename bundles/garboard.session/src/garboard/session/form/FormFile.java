// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage;
import garboard.model.GarboardPackage.Literals;
import garboard.session.Stop;

/** Reads {@code form.txt}; its head tells how it is written. A line that names nothing of the model is a fault of ours and stops us. */
final class FormFile {

    private final Map<Stop, List<FormGroup>> stops = new LinkedHashMap<>();
    private final Map<EClass, ItemForm> items = new LinkedHashMap<>();
    private Optional<Stop> stop = Optional.empty();
    private EClass anchor = Literals.COMMISSIONING_RECORD;
    private List<EStructuralFeature> base = List.of();
    private List<List<EStructuralFeature>> columns = List.of();
    private final List<FormGroup> groups = new ArrayList<>();
    private final List<FormEntry> entries = new ArrayList<>();
    private String group = "";
    private boolean shut;

    private FormFile() {
    }

    static Form read() {
        try (var in = new BufferedReader(new InputStreamReader(FormFile.class.getResourceAsStream("form.txt"), StandardCharsets.UTF_8))) {
            var file = new FormFile();
            in.lines().map(String::strip).filter(line -> !line.isEmpty() && !line.startsWith("#")).forEach(file::line);
            file.endPart();
            return new Form(file.stops, file.items);
        } catch (IOException broken) {
            throw new UncheckedIOException("form.txt cannot be read from the bundle", broken);
        }
    }

    private void line(String line) {
        String[] words = line.split("[ :]+");
        switch (words.length == 1 ? "" : words[0]) {
            case "stop" -> beginStop(words);
            case "items" -> beginItems(words);
            case "group" -> beginGroup(words);
            case "under" -> entries.add(new FormEntry.Under((EReference) path(words[1]).getLast()));
            case "list" -> entries.add(new FormEntry.Items(Form.references(path(words[1]))));
            default -> entries.add(entry(path(line)));
        }
    }

    private static FormEntry entry(List<EStructuralFeature> path) {
        return path.getLast() instanceof EAttribute ? new FormEntry.One(path) : new FormEntry.Place(Form.references(path));
    }

    private void beginStop(String[] words) {
        endPart();
        stop = Optional.of(Stop.valueOf(words[1]));
        anchor = Literals.COMMISSIONING_RECORD;
        base = List.of();
        base = words.length > 2 ? path(words[2]) : List.of();
    }

    private void beginItems(String[] words) {
        endPart();
        stop = Optional.empty();
        anchor = (EClass) GarboardPackage.eINSTANCE.getEClassifier(words[1]);
        base = List.of();
        columns = new ArrayList<>();
        for (String word : List.of(words).subList(2, words.length)) {
            columns.add(path(word));
        }
    }

    private void beginGroup(String[] words) {
        endGroup();
        group = words[1];
        shut = words.length > 2;
    }

    private void endGroup() {
        if (!entries.isEmpty()) {
            groups.add(new FormGroup(group, part(group), shut, entries));
            entries.clear();
        }
    }

    private void endPart() {
        endGroup();
        if (stop.isPresent()) {
            stops.put(stop.get(), List.copyOf(groups));
        } else if (!columns.isEmpty()) {
            items.put(anchor, new ItemForm(columns, groups));
        }
        groups.clear();
    }

    private Optional<EReference> part(String name) {
        return type(base).getEStructuralFeature(name) instanceof EReference reference ? Optional.of(reference) : Optional.empty();
    }

    private EClass type(List<EStructuralFeature> path) {
        return path.isEmpty() ? anchor : ((EReference) path.getLast()).getEReferenceType();
    }

    private List<EStructuralFeature> path(String words) {
        List<EStructuralFeature> path = new ArrayList<>(base);
        for (String step : words.split("\\.")) {
            EStructuralFeature feature = type(path).getEStructuralFeature(step);
            if (feature == null) {
                throw new IllegalStateException("form.txt names " + words + ", but " + type(path).getName() + " has no " + step);
            }
            path.add(feature);
        }
        return List.copyOf(path);
    }
}
