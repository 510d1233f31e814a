// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;

import garboard.model.FieldTextException;
import garboard.model.Labels;
import garboard.model.RecordPath;

/** Puts a fault that EMF found while loading into one sentence: file, line, field, what was found, what would be right. */
final class LoadFault {

    private final String file;
    private final Labels labels = Labels.in(Locale.ENGLISH);

    LoadFault(String file) {
        this.file = file;
    }

    String sentence(Resource.Diagnostic fault) {
        return file + RecordReader.atLine(fault.getLine()) + " cannot be read: " + RecordReader.oneLine(told(fault));
    }

    private String told(Resource.Diagnostic fault) {
        if (fault instanceof IllegalValueException value) {
            return place(value.getObject(), value.getFeature()) + ": " + reason(value);
        }
        if (fault instanceof UnresolvedReferenceException reference) {
            return place(reference.getObject(), reference.getFeature()) + ": \"" + reference.getReference()
                + "\" is the id of nothing in the record; right would be the id of an item that is there";
        }
        return fault.getMessage();
    }

    private String place(EObject owner, EStructuralFeature feature) {
        return RecordPath.words(owner, feature, labels) + " (" + RecordPath.key(owner, feature) + ")";
    }

    private static String reason(IllegalValueException fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof FieldTextException refused) {
                return refused.getMessage();
            }
        }
        Throwable cause = fault.getCause();
        return cause instanceof IllegalArgumentException && cause.getMessage() != null ? cause.getMessage()
            : "what stands there does not belong there";
    }
}
