/**
 */
package garboard.model;

import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fuel Separator</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.FuelSeparator#getMaker <em>Maker</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getRatedFlow <em>Rated Flow</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getFineness <em>Fineness</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getOnEngineFineness <em>On Engine Fineness</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getBowl <em>Bowl</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getClearanceBelow <em>Clearance Below</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getFixedToStructure <em>Fixed To Structure</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getHighestPointOfLine <em>Highest Point Of Line</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getFireTested <em>Fire Tested</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getWaterAlarm <em>Water Alarm</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getElementChangedOn <em>Element Changed On</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getBypassOrSpare <em>Bypass Or Spare</em>}</li>
 *   <li>{@link garboard.model.FuelSeparator#getWaterFound <em>Water Found</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getFuelSeparator()
 * @generated
 */
public interface FuelSeparator extends EObject {
	/**
	 * Returns the value of the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maker</em>' attribute.
	 * @see #setMaker(String)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_Maker()
	 * @generated
	 */
	String getMaker();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getMaker <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maker</em>' attribute.
	 * @see #getMaker()
	 * @generated
	 */
	void setMaker(String value);

	/**
	 * Returns the value of the '<em><b>Rated Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Flow</em>' attribute.
	 * @see #setRatedFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_RatedFlow()
	 * @generated
	 */
	VolumeFlow getRatedFlow();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getRatedFlow <em>Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Flow</em>' attribute.
	 * @see #getRatedFlow()
	 * @generated
	 */
	void setRatedFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Fineness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fineness</em>' attribute.
	 * @see #setFineness(Length)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_Fineness()
	 * @generated
	 */
	Length getFineness();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getFineness <em>Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fineness</em>' attribute.
	 * @see #getFineness()
	 * @generated
	 */
	void setFineness(Length value);

	/**
	 * Returns the value of the '<em><b>On Engine Fineness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On Engine Fineness</em>' attribute.
	 * @see #setOnEngineFineness(Length)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_OnEngineFineness()
	 * @generated
	 */
	Length getOnEngineFineness();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getOnEngineFineness <em>On Engine Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On Engine Fineness</em>' attribute.
	 * @see #getOnEngineFineness()
	 * @generated
	 */
	void setOnEngineFineness(Length value);

	/**
	 * Returns the value of the '<em><b>Bowl</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.BowlKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bowl</em>' attribute.
	 * @see garboard.model.BowlKind
	 * @see #setBowl(BowlKind)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_Bowl()
	 * @generated
	 */
	BowlKind getBowl();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getBowl <em>Bowl</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bowl</em>' attribute.
	 * @see garboard.model.BowlKind
	 * @see #getBowl()
	 * @generated
	 */
	void setBowl(BowlKind value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' containment reference.
	 * @see #setPosition(Point)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_Position()
	 * @generated
	 */
	Point getPosition();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getPosition <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' containment reference.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Clearance Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clearance Below</em>' attribute.
	 * @see #setClearanceBelow(Length)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_ClearanceBelow()
	 * @generated
	 */
	Length getClearanceBelow();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getClearanceBelow <em>Clearance Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clearance Below</em>' attribute.
	 * @see #getClearanceBelow()
	 * @generated
	 */
	void setClearanceBelow(Length value);

	/**
	 * Returns the value of the '<em><b>Fixed To Structure</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fixed To Structure</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFixedToStructure(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_FixedToStructure()
	 * @generated
	 */
	Answer getFixedToStructure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getFixedToStructure <em>Fixed To Structure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fixed To Structure</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFixedToStructure()
	 * @generated
	 */
	void setFixedToStructure(Answer value);

	/**
	 * Returns the value of the '<em><b>Highest Point Of Line</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Highest Point Of Line</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setHighestPointOfLine(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_HighestPointOfLine()
	 * @generated
	 */
	Answer getHighestPointOfLine();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getHighestPointOfLine <em>Highest Point Of Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Highest Point Of Line</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getHighestPointOfLine()
	 * @generated
	 */
	void setHighestPointOfLine(Answer value);

	/**
	 * Returns the value of the '<em><b>Fire Tested</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fire Tested</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFireTested(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_FireTested()
	 * @generated
	 */
	Answer getFireTested();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getFireTested <em>Fire Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fire Tested</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFireTested()
	 * @generated
	 */
	void setFireTested(Answer value);

	/**
	 * Returns the value of the '<em><b>Water Alarm</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water Alarm</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterAlarm(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_WaterAlarm()
	 * @generated
	 */
	Answer getWaterAlarm();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getWaterAlarm <em>Water Alarm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Alarm</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterAlarm()
	 * @generated
	 */
	void setWaterAlarm(Answer value);

	/**
	 * Returns the value of the '<em><b>Element Changed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Element Changed On</em>' attribute.
	 * @see #setElementChangedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_ElementChangedOn()
	 * @generated
	 */
	LocalDate getElementChangedOn();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getElementChangedOn <em>Element Changed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element Changed On</em>' attribute.
	 * @see #getElementChangedOn()
	 * @generated
	 */
	void setElementChangedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Bypass Or Spare</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bypass Or Spare</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBypassOrSpare(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_BypassOrSpare()
	 * @generated
	 */
	Answer getBypassOrSpare();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getBypassOrSpare <em>Bypass Or Spare</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bypass Or Spare</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBypassOrSpare()
	 * @generated
	 */
	void setBypassOrSpare(Answer value);

	/**
	 * Returns the value of the '<em><b>Water Found</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water Found</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterFound(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSeparator_WaterFound()
	 * @generated
	 */
	Answer getWaterFound();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSeparator#getWaterFound <em>Water Found</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Found</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterFound()
	 * @generated
	 */
	void setWaterFound(Answer value);

} // FuelSeparator
