/**
 */
package garboard.model;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Separator Drain</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.SeparatorDrain#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.SeparatorDrain#getBaseHeight <em>Base Height</em>}</li>
 *   <li>{@link garboard.model.SeparatorDrain#getOwnSeacock <em>Own Seacock</em>}</li>
 *   <li>{@link garboard.model.SeparatorDrain#getFallsAllTheWay <em>Falls All The Way</em>}</li>
 *   <li>{@link garboard.model.SeparatorDrain#getGasSidePressure <em>Gas Side Pressure</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getSeparatorDrain()
 * @generated
 */
public interface SeparatorDrain extends EObject {
	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getSeparatorDrain_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.SeparatorDrain#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

	/**
	 * Returns the value of the '<em><b>Base Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Base Height</em>' attribute.
	 * @see #setBaseHeight(Length)
	 * @see garboard.model.GarboardPackage#getSeparatorDrain_BaseHeight()
	 * @generated
	 */
	Length getBaseHeight();

	/**
	 * Sets the value of the '{@link garboard.model.SeparatorDrain#getBaseHeight <em>Base Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base Height</em>' attribute.
	 * @see #getBaseHeight()
	 * @generated
	 */
	void setBaseHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Own Seacock</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Seacock</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setOwnSeacock(Answer)
	 * @see garboard.model.GarboardPackage#getSeparatorDrain_OwnSeacock()
	 * @generated
	 */
	Answer getOwnSeacock();

	/**
	 * Sets the value of the '{@link garboard.model.SeparatorDrain#getOwnSeacock <em>Own Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Seacock</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getOwnSeacock()
	 * @generated
	 */
	void setOwnSeacock(Answer value);

	/**
	 * Returns the value of the '<em><b>Falls All The Way</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Falls All The Way</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFallsAllTheWay(Answer)
	 * @see garboard.model.GarboardPackage#getSeparatorDrain_FallsAllTheWay()
	 * @generated
	 */
	Answer getFallsAllTheWay();

	/**
	 * Sets the value of the '{@link garboard.model.SeparatorDrain#getFallsAllTheWay <em>Falls All The Way</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Falls All The Way</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFallsAllTheWay()
	 * @generated
	 */
	void setFallsAllTheWay(Answer value);

	/**
	 * Returns the value of the '<em><b>Gas Side Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gas Side Pressure</em>' attribute.
	 * @see #setGasSidePressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getSeparatorDrain_GasSidePressure()
	 * @generated
	 */
	GaugePressure getGasSidePressure();

	/**
	 * Sets the value of the '{@link garboard.model.SeparatorDrain#getGasSidePressure <em>Gas Side Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gas Side Pressure</em>' attribute.
	 * @see #getGasSidePressure()
	 * @generated
	 */
	void setGasSidePressure(GaugePressure value);

} // SeparatorDrain
