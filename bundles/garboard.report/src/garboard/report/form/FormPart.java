// SPDX-License-Identifier: EPL-2.0
package garboard.report.form;

import java.util.List;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** A part of a sheet under a heading of its own. */
public sealed interface FormPart {

    /** The features from the record to what the part is about; empty for the record itself. */
    List<EStructuralFeature> path();

    List<FormField> fields();

    /** Fields that the record has once. */
    record Group(List<EStructuralFeature> path, List<FormField> fields) implements FormPart {
        public Group {
            path = List.copyOf(path);
            fields = List.copyOf(fields);
        }
    }

    /** Fields of each item of a list: the items stand side by side. */
    record Items(List<EStructuralFeature> path, List<FormField> fields, int blanks) implements FormPart {
        public Items {
            path = List.copyOf(path);
            fields = List.copyOf(fields);
        }

        /** The list. */
        public EReference list() {
            return (EReference) path.getLast();
        }

        /** The list above this one, when the items belong to items of another list, as bends belong to sections of hose. */
        public java.util.Optional<EReference> owningList() {
            return path.subList(0, path.size() - 1).stream().filter(EStructuralFeature::isMany).map(EReference.class::cast)
                .reduce((first, second) -> second);
        }

        /** The list in keys: {@code rawWater.hoses.fittings}. */
        public String key() {
            return String.join(".", path.stream().map(EStructuralFeature::getName).toList());
        }
    }
}
