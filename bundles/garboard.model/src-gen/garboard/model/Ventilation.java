/**
 */
package garboard.model;

import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ventilation</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Ventilation#getNetVolume <em>Net Volume</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getGrossVolume <em>Gross Volume</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getOpenAreaToAtmosphere <em>Open Area To Atmosphere</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getConnectedOpeningFraction <em>Connected Opening Fraction</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getCompartmentHeight <em>Compartment Height</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getBilgeWaterHeight <em>Bilge Water Height</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getDucts <em>Ducts</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getBlowerRatedFlow <em>Blower Rated Flow</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getBlowerMeasuredFlow <em>Blower Measured Flow</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getBlowerLabelAtEachStart <em>Blower Label At Each Start</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getBlowerInterlocked <em>Blower Interlocked</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getBlowerIgnitionProtected <em>Blower Ignition Protected</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getSealedFromAccommodation <em>Sealed From Accommodation</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getSupplyFromOutside <em>Supply From Outside</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getSupplyAreaTotal <em>Supply Area Total</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getExhaustAreaTotal <em>Exhaust Area Total</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getNaturalDraught <em>Natural Draught</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getOutsideTemperature <em>Outside Temperature</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getCompartmentTemperature <em>Compartment Temperature</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getAirInletTemperature <em>Air Inlet Temperature</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getDepression <em>Depression</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getDesignAmbient <em>Design Ambient</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getDuctsLowAndHigh <em>Ducts Low And High</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getClearOfExhaustOutlet <em>Clear Of Exhaust Outlet</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getIgnitionProtectedComponents <em>Ignition Protected Components</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getCrankingMotorFitted <em>Cranking Motor Fitted</em>}</li>
 *   <li>{@link garboard.model.Ventilation#getFanFlow <em>Fan Flow</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getVentilation()
 * @generated
 */
public interface Ventilation extends EObject {
	/**
	 * Returns the value of the '<em><b>Net Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Net Volume</em>' attribute.
	 * @see #setNetVolume(Volume)
	 * @see garboard.model.GarboardPackage#getVentilation_NetVolume()
	 * @generated
	 */
	Volume getNetVolume();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getNetVolume <em>Net Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Net Volume</em>' attribute.
	 * @see #getNetVolume()
	 * @generated
	 */
	void setNetVolume(Volume value);

	/**
	 * Returns the value of the '<em><b>Gross Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gross Volume</em>' attribute.
	 * @see #setGrossVolume(Volume)
	 * @see garboard.model.GarboardPackage#getVentilation_GrossVolume()
	 * @generated
	 */
	Volume getGrossVolume();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getGrossVolume <em>Gross Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gross Volume</em>' attribute.
	 * @see #getGrossVolume()
	 * @generated
	 */
	void setGrossVolume(Volume value);

	/**
	 * Returns the value of the '<em><b>Open Area To Atmosphere</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Open Area To Atmosphere</em>' attribute.
	 * @see #setOpenAreaToAtmosphere(Area)
	 * @see garboard.model.GarboardPackage#getVentilation_OpenAreaToAtmosphere()
	 * @generated
	 */
	Area getOpenAreaToAtmosphere();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getOpenAreaToAtmosphere <em>Open Area To Atmosphere</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Area To Atmosphere</em>' attribute.
	 * @see #getOpenAreaToAtmosphere()
	 * @generated
	 */
	void setOpenAreaToAtmosphere(Area value);

	/**
	 * Returns the value of the '<em><b>Connected Opening Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Connected Opening Fraction</em>' attribute.
	 * @see #setConnectedOpeningFraction(Ratio)
	 * @see garboard.model.GarboardPackage#getVentilation_ConnectedOpeningFraction()
	 * @generated
	 */
	Ratio getConnectedOpeningFraction();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getConnectedOpeningFraction <em>Connected Opening Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Connected Opening Fraction</em>' attribute.
	 * @see #getConnectedOpeningFraction()
	 * @generated
	 */
	void setConnectedOpeningFraction(Ratio value);

	/**
	 * Returns the value of the '<em><b>Compartment Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Compartment Height</em>' attribute.
	 * @see #setCompartmentHeight(Length)
	 * @see garboard.model.GarboardPackage#getVentilation_CompartmentHeight()
	 * @generated
	 */
	Length getCompartmentHeight();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getCompartmentHeight <em>Compartment Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Compartment Height</em>' attribute.
	 * @see #getCompartmentHeight()
	 * @generated
	 */
	void setCompartmentHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Bilge Water Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bilge Water Height</em>' attribute.
	 * @see #setBilgeWaterHeight(Length)
	 * @see garboard.model.GarboardPackage#getVentilation_BilgeWaterHeight()
	 * @generated
	 */
	Length getBilgeWaterHeight();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getBilgeWaterHeight <em>Bilge Water Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bilge Water Height</em>' attribute.
	 * @see #getBilgeWaterHeight()
	 * @generated
	 */
	void setBilgeWaterHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Ducts</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.AirDuct}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ducts</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getVentilation_Ducts()
	 * @generated
	 */
	EList<AirDuct> getDucts();

	/**
	 * Returns the value of the '<em><b>Blower Rated Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blower Rated Flow</em>' attribute.
	 * @see #setBlowerRatedFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getVentilation_BlowerRatedFlow()
	 * @generated
	 */
	VolumeFlow getBlowerRatedFlow();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getBlowerRatedFlow <em>Blower Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blower Rated Flow</em>' attribute.
	 * @see #getBlowerRatedFlow()
	 * @generated
	 */
	void setBlowerRatedFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Blower Measured Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blower Measured Flow</em>' attribute.
	 * @see #setBlowerMeasuredFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getVentilation_BlowerMeasuredFlow()
	 * @generated
	 */
	VolumeFlow getBlowerMeasuredFlow();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getBlowerMeasuredFlow <em>Blower Measured Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blower Measured Flow</em>' attribute.
	 * @see #getBlowerMeasuredFlow()
	 * @generated
	 */
	void setBlowerMeasuredFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Blower Label At Each Start</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blower Label At Each Start</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBlowerLabelAtEachStart(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_BlowerLabelAtEachStart()
	 * @generated
	 */
	Answer getBlowerLabelAtEachStart();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getBlowerLabelAtEachStart <em>Blower Label At Each Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blower Label At Each Start</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBlowerLabelAtEachStart()
	 * @generated
	 */
	void setBlowerLabelAtEachStart(Answer value);

	/**
	 * Returns the value of the '<em><b>Blower Interlocked</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blower Interlocked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBlowerInterlocked(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_BlowerInterlocked()
	 * @generated
	 */
	Answer getBlowerInterlocked();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getBlowerInterlocked <em>Blower Interlocked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blower Interlocked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBlowerInterlocked()
	 * @generated
	 */
	void setBlowerInterlocked(Answer value);

	/**
	 * Returns the value of the '<em><b>Blower Ignition Protected</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blower Ignition Protected</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBlowerIgnitionProtected(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_BlowerIgnitionProtected()
	 * @generated
	 */
	Answer getBlowerIgnitionProtected();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getBlowerIgnitionProtected <em>Blower Ignition Protected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blower Ignition Protected</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBlowerIgnitionProtected()
	 * @generated
	 */
	void setBlowerIgnitionProtected(Answer value);

	/**
	 * Returns the value of the '<em><b>Sealed From Accommodation</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sealed From Accommodation</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSealedFromAccommodation(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_SealedFromAccommodation()
	 * @generated
	 */
	Answer getSealedFromAccommodation();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getSealedFromAccommodation <em>Sealed From Accommodation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sealed From Accommodation</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSealedFromAccommodation()
	 * @generated
	 */
	void setSealedFromAccommodation(Answer value);

	/**
	 * Returns the value of the '<em><b>Supply From Outside</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supply From Outside</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSupplyFromOutside(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_SupplyFromOutside()
	 * @generated
	 */
	Answer getSupplyFromOutside();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getSupplyFromOutside <em>Supply From Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supply From Outside</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSupplyFromOutside()
	 * @generated
	 */
	void setSupplyFromOutside(Answer value);

	/**
	 * Returns the value of the '<em><b>Supply Area Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supply Area Total</em>' attribute.
	 * @see #setSupplyAreaTotal(Area)
	 * @see garboard.model.GarboardPackage#getVentilation_SupplyAreaTotal()
	 * @generated
	 */
	Area getSupplyAreaTotal();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getSupplyAreaTotal <em>Supply Area Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supply Area Total</em>' attribute.
	 * @see #getSupplyAreaTotal()
	 * @generated
	 */
	void setSupplyAreaTotal(Area value);

	/**
	 * Returns the value of the '<em><b>Exhaust Area Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exhaust Area Total</em>' attribute.
	 * @see #setExhaustAreaTotal(Area)
	 * @see garboard.model.GarboardPackage#getVentilation_ExhaustAreaTotal()
	 * @generated
	 */
	Area getExhaustAreaTotal();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getExhaustAreaTotal <em>Exhaust Area Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exhaust Area Total</em>' attribute.
	 * @see #getExhaustAreaTotal()
	 * @generated
	 */
	void setExhaustAreaTotal(Area value);

	/**
	 * Returns the value of the '<em><b>Natural Draught</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Natural Draught</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setNaturalDraught(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_NaturalDraught()
	 * @generated
	 */
	Answer getNaturalDraught();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getNaturalDraught <em>Natural Draught</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Natural Draught</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getNaturalDraught()
	 * @generated
	 */
	void setNaturalDraught(Answer value);

	/**
	 * Returns the value of the '<em><b>Outside Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outside Temperature</em>' attribute.
	 * @see #setOutsideTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getVentilation_OutsideTemperature()
	 * @generated
	 */
	Temperature getOutsideTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getOutsideTemperature <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outside Temperature</em>' attribute.
	 * @see #getOutsideTemperature()
	 * @generated
	 */
	void setOutsideTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Compartment Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Compartment Temperature</em>' attribute.
	 * @see #setCompartmentTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getVentilation_CompartmentTemperature()
	 * @generated
	 */
	Temperature getCompartmentTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getCompartmentTemperature <em>Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Compartment Temperature</em>' attribute.
	 * @see #getCompartmentTemperature()
	 * @generated
	 */
	void setCompartmentTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Air Inlet Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Air Inlet Temperature</em>' attribute.
	 * @see #setAirInletTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getVentilation_AirInletTemperature()
	 * @generated
	 */
	Temperature getAirInletTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getAirInletTemperature <em>Air Inlet Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Air Inlet Temperature</em>' attribute.
	 * @see #getAirInletTemperature()
	 * @generated
	 */
	void setAirInletTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Depression</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Depression</em>' attribute.
	 * @see #setDepression(PressureDifference)
	 * @see garboard.model.GarboardPackage#getVentilation_Depression()
	 * @generated
	 */
	PressureDifference getDepression();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getDepression <em>Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depression</em>' attribute.
	 * @see #getDepression()
	 * @generated
	 */
	void setDepression(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Design Ambient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Design Ambient</em>' attribute.
	 * @see #setDesignAmbient(Temperature)
	 * @see garboard.model.GarboardPackage#getVentilation_DesignAmbient()
	 * @generated
	 */
	Temperature getDesignAmbient();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getDesignAmbient <em>Design Ambient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Ambient</em>' attribute.
	 * @see #getDesignAmbient()
	 * @generated
	 */
	void setDesignAmbient(Temperature value);

	/**
	 * Returns the value of the '<em><b>Ducts Low And High</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ducts Low And High</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDuctsLowAndHigh(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_DuctsLowAndHigh()
	 * @generated
	 */
	Answer getDuctsLowAndHigh();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getDuctsLowAndHigh <em>Ducts Low And High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ducts Low And High</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDuctsLowAndHigh()
	 * @generated
	 */
	void setDuctsLowAndHigh(Answer value);

	/**
	 * Returns the value of the '<em><b>Clear Of Exhaust Outlet</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clear Of Exhaust Outlet</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setClearOfExhaustOutlet(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_ClearOfExhaustOutlet()
	 * @generated
	 */
	Answer getClearOfExhaustOutlet();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getClearOfExhaustOutlet <em>Clear Of Exhaust Outlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clear Of Exhaust Outlet</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getClearOfExhaustOutlet()
	 * @generated
	 */
	void setClearOfExhaustOutlet(Answer value);

	/**
	 * Returns the value of the '<em><b>Ignition Protected Components</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ignition Protected Components</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setIgnitionProtectedComponents(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_IgnitionProtectedComponents()
	 * @generated
	 */
	Answer getIgnitionProtectedComponents();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getIgnitionProtectedComponents <em>Ignition Protected Components</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ignition Protected Components</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getIgnitionProtectedComponents()
	 * @generated
	 */
	void setIgnitionProtectedComponents(Answer value);

	/**
	 * Returns the value of the '<em><b>Cranking Motor Fitted</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cranking Motor Fitted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCrankingMotorFitted(Answer)
	 * @see garboard.model.GarboardPackage#getVentilation_CrankingMotorFitted()
	 * @generated
	 */
	Answer getCrankingMotorFitted();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getCrankingMotorFitted <em>Cranking Motor Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cranking Motor Fitted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCrankingMotorFitted()
	 * @generated
	 */
	void setCrankingMotorFitted(Answer value);

	/**
	 * Returns the value of the '<em><b>Fan Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fan Flow</em>' attribute.
	 * @see #setFanFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getVentilation_FanFlow()
	 * @generated
	 */
	VolumeFlow getFanFlow();

	/**
	 * Sets the value of the '{@link garboard.model.Ventilation#getFanFlow <em>Fan Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fan Flow</em>' attribute.
	 * @see #getFanFlow()
	 * @generated
	 */
	void setFanFlow(VolumeFlow value);

} // Ventilation
