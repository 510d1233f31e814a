// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage.Literals;

/** One line of a group. The paths begin at the record, or at the item for what is told of an item. */
public sealed interface FormEntry {

    /** A field. */
    record One(List<EStructuralFeature> path) implements FormEntry {
        public One {
            path = List.copyOf(path);
        }

        public EAttribute attribute() {
            return (EAttribute) path.getLast();
        }
    }

    /** A place on the boat: the path leads to the point with its three figures. */
    record Place(List<EReference> path) implements FormEntry {
        public Place {
            path = List.copyOf(path);
        }

        /** {@return the paths of its figures: forward, to starboard, up} */
        public List<List<EStructuralFeature>> figures() {
            return List.of(Literals.POINT__X, Literals.POINT__Y, Literals.POINT__Z).stream().map(figure -> {
                List<EStructuralFeature> longer = new ArrayList<>(path);
                longer.add(figure);
                return List.copyOf(longer);
            }).toList();
        }
    }

    /** A heading inside the group, called as the part is. */
    record Under(EReference part) implements FormEntry {
    }

    /** A list of items. */
    record Items(List<EReference> path) implements FormEntry {
        public Items {
            path = List.copyOf(path);
        }
    }

    /** {@return the paths of all fields and lists that stand on this line} */
    default List<List<? extends EStructuralFeature>> paths() {
        return switch (this) {
            case One one -> List.of(one.path());
            case Place place -> List.copyOf(place.figures());
            case Items items -> List.of(items.path());
            case Under under -> List.of();
        };
    }
}
