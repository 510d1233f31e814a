/**
 */
package garboard.model;

import garboard.quantity.Area;
import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Water Strainer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.WaterStrainer#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.WaterStrainer#getPortBore <em>Port Bore</em>}</li>
 *   <li>{@link garboard.model.WaterStrainer#getBasketOpenArea <em>Basket Open Area</em>}</li>
 *   <li>{@link garboard.model.WaterStrainer#getHoleSize <em>Hole Size</em>}</li>
 *   <li>{@link garboard.model.WaterStrainer#getSeeThroughOrOpenable <em>See Through Or Openable</em>}</li>
 *   <li>{@link garboard.model.WaterStrainer#getBesideSeacock <em>Beside Seacock</em>}</li>
 *   <li>{@link garboard.model.WaterStrainer#getLidAboveWaterline <em>Lid Above Waterline</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getWaterStrainer()
 * @generated
 */
public interface WaterStrainer extends EObject {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' containment reference.
	 * @see #setPosition(Point)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_Position()
	 * @generated
	 */
	Point getPosition();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getPosition <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' containment reference.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Port Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Port Bore</em>' attribute.
	 * @see #setPortBore(Length)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_PortBore()
	 * @generated
	 */
	Length getPortBore();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getPortBore <em>Port Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Port Bore</em>' attribute.
	 * @see #getPortBore()
	 * @generated
	 */
	void setPortBore(Length value);

	/**
	 * Returns the value of the '<em><b>Basket Open Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Basket Open Area</em>' attribute.
	 * @see #setBasketOpenArea(Area)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_BasketOpenArea()
	 * @generated
	 */
	Area getBasketOpenArea();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getBasketOpenArea <em>Basket Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Basket Open Area</em>' attribute.
	 * @see #getBasketOpenArea()
	 * @generated
	 */
	void setBasketOpenArea(Area value);

	/**
	 * Returns the value of the '<em><b>Hole Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hole Size</em>' attribute.
	 * @see #setHoleSize(Length)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_HoleSize()
	 * @generated
	 */
	Length getHoleSize();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getHoleSize <em>Hole Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hole Size</em>' attribute.
	 * @see #getHoleSize()
	 * @generated
	 */
	void setHoleSize(Length value);

	/**
	 * Returns the value of the '<em><b>See Through Or Openable</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>See Through Or Openable</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSeeThroughOrOpenable(Answer)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_SeeThroughOrOpenable()
	 * @generated
	 */
	Answer getSeeThroughOrOpenable();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getSeeThroughOrOpenable <em>See Through Or Openable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>See Through Or Openable</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSeeThroughOrOpenable()
	 * @generated
	 */
	void setSeeThroughOrOpenable(Answer value);

	/**
	 * Returns the value of the '<em><b>Beside Seacock</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Beside Seacock</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBesideSeacock(Answer)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_BesideSeacock()
	 * @generated
	 */
	Answer getBesideSeacock();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getBesideSeacock <em>Beside Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Beside Seacock</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBesideSeacock()
	 * @generated
	 */
	void setBesideSeacock(Answer value);

	/**
	 * Returns the value of the '<em><b>Lid Above Waterline</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lid Above Waterline</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLidAboveWaterline(Answer)
	 * @see garboard.model.GarboardPackage#getWaterStrainer_LidAboveWaterline()
	 * @generated
	 */
	Answer getLidAboveWaterline();

	/**
	 * Sets the value of the '{@link garboard.model.WaterStrainer#getLidAboveWaterline <em>Lid Above Waterline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lid Above Waterline</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLidAboveWaterline()
	 * @generated
	 */
	void setLidAboveWaterline(Answer value);

} // WaterStrainer
