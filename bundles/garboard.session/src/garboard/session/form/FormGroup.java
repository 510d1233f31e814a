// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EReference;

/**
 * Fields that belong together.
 *
 * @param id the word by which its heading and whether it is open are known, together with its stop or class of items
 * @param part the part that it is called after, where it is
 * @param shut whether it is closed while nothing is entered in it
 */
public record FormGroup(String id, Optional<EReference> part, boolean shut, List<FormEntry> entries) {

    /** The group of the fields that have no other. */
    public static final String OTHERS = "others";

    public FormGroup {
        entries = List.copyOf(entries);
    }
}
