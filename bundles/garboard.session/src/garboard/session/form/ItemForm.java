// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.List;

import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * How the items of a list are shown.
 *
 * @param columns the paths from an item to what stands in the table
 * @param groups what is told of the chosen item below the table; none when the columns say everything
 */
public record ItemForm(List<List<EStructuralFeature>> columns, List<FormGroup> groups) {

    public ItemForm {
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
    }
}
