/**
 */
package garboard.model;

import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Water Pump</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.WaterPump#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getInletBore <em>Inlet Bore</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getOutletBore <em>Outlet Bore</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getRatedFlow <em>Rated Flow</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getSelfPriming <em>Self Priming</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getImpellerPiecesMissing <em>Impeller Pieces Missing</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getImpellerPiecesFound <em>Impeller Pieces Found</em>}</li>
 *   <li>{@link garboard.model.WaterPump#getImpellerChangedOn <em>Impeller Changed On</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getWaterPump()
 * @generated
 */
public interface WaterPump extends EObject {
	/**
	 * Returns the value of the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' containment reference.
	 * @see #setPosition(Point)
	 * @see garboard.model.GarboardPackage#getWaterPump_Position()
	 * @generated
	 */
	Point getPosition();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getPosition <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' containment reference.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Inlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inlet Bore</em>' attribute.
	 * @see #setInletBore(Length)
	 * @see garboard.model.GarboardPackage#getWaterPump_InletBore()
	 * @generated
	 */
	Length getInletBore();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getInletBore <em>Inlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inlet Bore</em>' attribute.
	 * @see #getInletBore()
	 * @generated
	 */
	void setInletBore(Length value);

	/**
	 * Returns the value of the '<em><b>Outlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outlet Bore</em>' attribute.
	 * @see #setOutletBore(Length)
	 * @see garboard.model.GarboardPackage#getWaterPump_OutletBore()
	 * @generated
	 */
	Length getOutletBore();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getOutletBore <em>Outlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outlet Bore</em>' attribute.
	 * @see #getOutletBore()
	 * @generated
	 */
	void setOutletBore(Length value);

	/**
	 * Returns the value of the '<em><b>Rated Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Flow</em>' attribute.
	 * @see #setRatedFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getWaterPump_RatedFlow()
	 * @generated
	 */
	VolumeFlow getRatedFlow();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getRatedFlow <em>Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Flow</em>' attribute.
	 * @see #getRatedFlow()
	 * @generated
	 */
	void setRatedFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Self Priming</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Self Priming</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSelfPriming(Answer)
	 * @see garboard.model.GarboardPackage#getWaterPump_SelfPriming()
	 * @generated
	 */
	Answer getSelfPriming();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getSelfPriming <em>Self Priming</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Self Priming</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSelfPriming()
	 * @generated
	 */
	void setSelfPriming(Answer value);

	/**
	 * Returns the value of the '<em><b>Impeller Pieces Missing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Impeller Pieces Missing</em>' attribute.
	 * @see #setImpellerPiecesMissing(Integer)
	 * @see garboard.model.GarboardPackage#getWaterPump_ImpellerPiecesMissing()
	 * @generated
	 */
	Integer getImpellerPiecesMissing();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getImpellerPiecesMissing <em>Impeller Pieces Missing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Impeller Pieces Missing</em>' attribute.
	 * @see #getImpellerPiecesMissing()
	 * @generated
	 */
	void setImpellerPiecesMissing(Integer value);

	/**
	 * Returns the value of the '<em><b>Impeller Pieces Found</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Impeller Pieces Found</em>' attribute.
	 * @see #setImpellerPiecesFound(Integer)
	 * @see garboard.model.GarboardPackage#getWaterPump_ImpellerPiecesFound()
	 * @generated
	 */
	Integer getImpellerPiecesFound();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getImpellerPiecesFound <em>Impeller Pieces Found</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Impeller Pieces Found</em>' attribute.
	 * @see #getImpellerPiecesFound()
	 * @generated
	 */
	void setImpellerPiecesFound(Integer value);

	/**
	 * Returns the value of the '<em><b>Impeller Changed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Impeller Changed On</em>' attribute.
	 * @see #setImpellerChangedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getWaterPump_ImpellerChangedOn()
	 * @generated
	 */
	LocalDate getImpellerChangedOn();

	/**
	 * Sets the value of the '{@link garboard.model.WaterPump#getImpellerChangedOn <em>Impeller Changed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Impeller Changed On</em>' attribute.
	 * @see #getImpellerChangedOn()
	 * @generated
	 */
	void setImpellerChangedOn(LocalDate value);

} // WaterPump
