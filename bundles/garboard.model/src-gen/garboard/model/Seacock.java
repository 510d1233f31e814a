/**
 */
package garboard.model;

import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Seacock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Seacock#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.Seacock#getMaterial <em>Material</em>}</li>
 *   <li>{@link garboard.model.Seacock#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.Seacock#getFullBore <em>Full Bore</em>}</li>
 *   <li>{@link garboard.model.Seacock#getLeverShowsState <em>Lever Shows State</em>}</li>
 *   <li>{@link garboard.model.Seacock#getReachableWithoutTools <em>Reachable Without Tools</em>}</li>
 *   <li>{@link garboard.model.Seacock#getCloseToHull <em>Close To Hull</em>}</li>
 *   <li>{@link garboard.model.Seacock#getStaticLoadMarked <em>Static Load Marked</em>}</li>
 *   <li>{@link garboard.model.Seacock#getWorksFreely <em>Works Freely</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getSeacock()
 * @generated
 */
public interface Seacock extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.ValveKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.ValveKind
	 * @see #setKind(ValveKind)
	 * @see garboard.model.GarboardPackage#getSeacock_Kind()
	 * @generated
	 */
	ValveKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.ValveKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ValveKind value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FittingMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see garboard.model.FittingMaterial
	 * @see #setMaterial(FittingMaterial)
	 * @see garboard.model.GarboardPackage#getSeacock_Material()
	 * @generated
	 */
	FittingMaterial getMaterial();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see garboard.model.FittingMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(FittingMaterial value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getSeacock_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

	/**
	 * Returns the value of the '<em><b>Full Bore</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Full Bore</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFullBore(Answer)
	 * @see garboard.model.GarboardPackage#getSeacock_FullBore()
	 * @generated
	 */
	Answer getFullBore();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getFullBore <em>Full Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Full Bore</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFullBore()
	 * @generated
	 */
	void setFullBore(Answer value);

	/**
	 * Returns the value of the '<em><b>Lever Shows State</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lever Shows State</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLeverShowsState(Answer)
	 * @see garboard.model.GarboardPackage#getSeacock_LeverShowsState()
	 * @generated
	 */
	Answer getLeverShowsState();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getLeverShowsState <em>Lever Shows State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lever Shows State</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLeverShowsState()
	 * @generated
	 */
	void setLeverShowsState(Answer value);

	/**
	 * Returns the value of the '<em><b>Reachable Without Tools</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reachable Without Tools</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setReachableWithoutTools(Answer)
	 * @see garboard.model.GarboardPackage#getSeacock_ReachableWithoutTools()
	 * @generated
	 */
	Answer getReachableWithoutTools();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getReachableWithoutTools <em>Reachable Without Tools</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reachable Without Tools</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getReachableWithoutTools()
	 * @generated
	 */
	void setReachableWithoutTools(Answer value);

	/**
	 * Returns the value of the '<em><b>Close To Hull</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Close To Hull</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCloseToHull(Answer)
	 * @see garboard.model.GarboardPackage#getSeacock_CloseToHull()
	 * @generated
	 */
	Answer getCloseToHull();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getCloseToHull <em>Close To Hull</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Close To Hull</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCloseToHull()
	 * @generated
	 */
	void setCloseToHull(Answer value);

	/**
	 * Returns the value of the '<em><b>Static Load Marked</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Static Load Marked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setStaticLoadMarked(Answer)
	 * @see garboard.model.GarboardPackage#getSeacock_StaticLoadMarked()
	 * @generated
	 */
	Answer getStaticLoadMarked();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getStaticLoadMarked <em>Static Load Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Static Load Marked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getStaticLoadMarked()
	 * @generated
	 */
	void setStaticLoadMarked(Answer value);

	/**
	 * Returns the value of the '<em><b>Works Freely</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Works Freely</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWorksFreely(Answer)
	 * @see garboard.model.GarboardPackage#getSeacock_WorksFreely()
	 * @generated
	 */
	Answer getWorksFreely();

	/**
	 * Sets the value of the '{@link garboard.model.Seacock#getWorksFreely <em>Works Freely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Works Freely</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWorksFreely()
	 * @generated
	 */
	void setWorksFreely(Answer value);

} // Seacock
