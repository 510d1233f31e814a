// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage.Literals;
import garboard.workbench.Desk;

/** What places of the record are called in a sentence. */
final class Places {

    private static final int STEPS = 2;

    private Places() {
    }

    /** {@return the last words of the way to a place: the part it belongs to and its own name} An item in a list goes by the list. */
    static String name(Desk desk, String key) {
        List<EStructuralFeature> way = new ArrayList<>();
        EClass type = Literals.COMMISSIONING_RECORD;
        for (String step : key.split("\\.")) {
            EStructuralFeature feature = type.getEStructuralFeature(step.replaceFirst("\\[.*", ""));
            if (feature == null) {
                return key;
            }
            way.add(feature);
            type = feature instanceof EReference reference ? reference.getEReferenceType() : type;
        }
        List<EStructuralFeature> last = way.subList(Math.max(0, way.size() - STEPS), way.size());
        return last.getFirst() == Literals.COMMISSIONING_RECORD__TRIAL ? desk.labels().label(way.getLast()) : desk.labels().labelOfPath(last);
    }
}
