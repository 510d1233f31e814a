/**
 */
package garboard.model;

import garboard.quantity.Area;
import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Hull Pick Up</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.HullPickUp#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.HullPickUp#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.HullPickUp#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.HullPickUp#getMaterial <em>Material</em>}</li>
 *   <li>{@link garboard.model.HullPickUp#getGratingOpenArea <em>Grating Open Area</em>}</li>
 *   <li>{@link garboard.model.HullPickUp#getLightShipRise <em>Light Ship Rise</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getHullPickUp()
 * @generated
 */
public interface HullPickUp extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.StrainerPickUp}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.StrainerPickUp
	 * @see #setKind(StrainerPickUp)
	 * @see garboard.model.GarboardPackage#getHullPickUp_Kind()
	 * @generated
	 */
	StrainerPickUp getKind();

	/**
	 * Sets the value of the '{@link garboard.model.HullPickUp#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.StrainerPickUp
	 * @see #getKind()
	 * @generated
	 */
	void setKind(StrainerPickUp value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' containment reference.
	 * @see #setPosition(Point)
	 * @see garboard.model.GarboardPackage#getHullPickUp_Position()
	 * @generated
	 */
	Point getPosition();

	/**
	 * Sets the value of the '{@link garboard.model.HullPickUp#getPosition <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' containment reference.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getHullPickUp_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.HullPickUp#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FittingMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see garboard.model.FittingMaterial
	 * @see #setMaterial(FittingMaterial)
	 * @see garboard.model.GarboardPackage#getHullPickUp_Material()
	 * @generated
	 */
	FittingMaterial getMaterial();

	/**
	 * Sets the value of the '{@link garboard.model.HullPickUp#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see garboard.model.FittingMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(FittingMaterial value);

	/**
	 * Returns the value of the '<em><b>Grating Open Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grating Open Area</em>' attribute.
	 * @see #setGratingOpenArea(Area)
	 * @see garboard.model.GarboardPackage#getHullPickUp_GratingOpenArea()
	 * @generated
	 */
	Area getGratingOpenArea();

	/**
	 * Sets the value of the '{@link garboard.model.HullPickUp#getGratingOpenArea <em>Grating Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grating Open Area</em>' attribute.
	 * @see #getGratingOpenArea()
	 * @generated
	 */
	void setGratingOpenArea(Area value);

	/**
	 * Returns the value of the '<em><b>Light Ship Rise</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Light Ship Rise</em>' attribute.
	 * @see #setLightShipRise(Length)
	 * @see garboard.model.GarboardPackage#getHullPickUp_LightShipRise()
	 * @generated
	 */
	Length getLightShipRise();

	/**
	 * Sets the value of the '{@link garboard.model.HullPickUp#getLightShipRise <em>Light Ship Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Light Ship Rise</em>' attribute.
	 * @see #getLightShipRise()
	 * @generated
	 */
	void setLightShipRise(Length value);

} // HullPickUp
