/**
 */
package garboard.model;

import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cable Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.CableRun#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.CableRun#getFunction <em>Function</em>}</li>
 *   <li>{@link garboard.model.CableRun#getConductorSize <em>Conductor Size</em>}</li>
 *   <li>{@link garboard.model.CableRun#getStrandClass <em>Strand Class</em>}</li>
 *   <li>{@link garboard.model.CableRun#getInsulation <em>Insulation</em>}</li>
 *   <li>{@link garboard.model.CableRun#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.CableRun#getCurrent <em>Current</em>}</li>
 *   <li>{@link garboard.model.CableRun#getSystemVoltage <em>System Voltage</em>}</li>
 *   <li>{@link garboard.model.CableRun#getCritical <em>Critical</em>}</li>
 *   <li>{@link garboard.model.CableRun#getInEngineSpace <em>In Engine Space</em>}</li>
 *   <li>{@link garboard.model.CableRun#getConductorsInBundle <em>Conductors In Bundle</em>}</li>
 *   <li>{@link garboard.model.CableRun#getConductorTemperature <em>Conductor Temperature</em>}</li>
 *   <li>{@link garboard.model.CableRun#getProtection <em>Protection</em>}</li>
 *   <li>{@link garboard.model.CableRun#getProtectionRating <em>Protection Rating</em>}</li>
 *   <li>{@link garboard.model.CableRun#getProtectionVoltageRating <em>Protection Voltage Rating</em>}</li>
 *   <li>{@link garboard.model.CableRun#getProtectionDistanceFromSource <em>Protection Distance From Source</em>}</li>
 *   <li>{@link garboard.model.CableRun#getSheathedToProtection <em>Sheathed To Protection</em>}</li>
 *   <li>{@link garboard.model.CableRun#getConnectedToBatteryTerminal <em>Connected To Battery Terminal</em>}</li>
 *   <li>{@link garboard.model.CableRun#getSupportSpacing <em>Support Spacing</em>}</li>
 *   <li>{@link garboard.model.CableRun#getRingTerminals <em>Ring Terminals</em>}</li>
 *   <li>{@link garboard.model.CableRun#getLugsOnStud <em>Lugs On Stud</em>}</li>
 *   <li>{@link garboard.model.CableRun#getChafeProtected <em>Chafe Protected</em>}</li>
 *   <li>{@link garboard.model.CableRun#getMultiStrandCopper <em>Multi Strand Copper</em>}</li>
 *   <li>{@link garboard.model.CableRun#getMeasuredDrop <em>Measured Drop</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getCableRun()
 * @generated
 */
public interface CableRun extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getCableRun_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Function</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.CableFunction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Function</em>' attribute.
	 * @see garboard.model.CableFunction
	 * @see #setFunction(CableFunction)
	 * @see garboard.model.GarboardPackage#getCableRun_Function()
	 * @generated
	 */
	CableFunction getFunction();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getFunction <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Function</em>' attribute.
	 * @see garboard.model.CableFunction
	 * @see #getFunction()
	 * @generated
	 */
	void setFunction(CableFunction value);

	/**
	 * Returns the value of the '<em><b>Conductor Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Conductor Size</em>' attribute.
	 * @see #setConductorSize(String)
	 * @see garboard.model.GarboardPackage#getCableRun_ConductorSize()
	 * @generated
	 */
	String getConductorSize();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getConductorSize <em>Conductor Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conductor Size</em>' attribute.
	 * @see #getConductorSize()
	 * @generated
	 */
	void setConductorSize(String value);

	/**
	 * Returns the value of the '<em><b>Strand Class</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.StrandClass}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strand Class</em>' attribute.
	 * @see garboard.model.StrandClass
	 * @see #setStrandClass(StrandClass)
	 * @see garboard.model.GarboardPackage#getCableRun_StrandClass()
	 * @generated
	 */
	StrandClass getStrandClass();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getStrandClass <em>Strand Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strand Class</em>' attribute.
	 * @see garboard.model.StrandClass
	 * @see #getStrandClass()
	 * @generated
	 */
	void setStrandClass(StrandClass value);

	/**
	 * Returns the value of the '<em><b>Insulation</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.InsulationRating}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Insulation</em>' attribute.
	 * @see garboard.model.InsulationRating
	 * @see #setInsulation(InsulationRating)
	 * @see garboard.model.GarboardPackage#getCableRun_Insulation()
	 * @generated
	 */
	InsulationRating getInsulation();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getInsulation <em>Insulation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Insulation</em>' attribute.
	 * @see garboard.model.InsulationRating
	 * @see #getInsulation()
	 * @generated
	 */
	void setInsulation(InsulationRating value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see garboard.model.GarboardPackage#getCableRun_Length()
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Current</em>' attribute.
	 * @see #setCurrent(Current)
	 * @see garboard.model.GarboardPackage#getCableRun_Current()
	 * @generated
	 */
	Current getCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getCurrent <em>Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current</em>' attribute.
	 * @see #getCurrent()
	 * @generated
	 */
	void setCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>System Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>System Voltage</em>' attribute.
	 * @see #setSystemVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getCableRun_SystemVoltage()
	 * @generated
	 */
	Voltage getSystemVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getSystemVoltage <em>System Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>System Voltage</em>' attribute.
	 * @see #getSystemVoltage()
	 * @generated
	 */
	void setSystemVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Critical</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Critical</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCritical(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_Critical()
	 * @generated
	 */
	Answer getCritical();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getCritical <em>Critical</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Critical</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCritical()
	 * @generated
	 */
	void setCritical(Answer value);

	/**
	 * Returns the value of the '<em><b>In Engine Space</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Engine Space</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setInEngineSpace(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_InEngineSpace()
	 * @generated
	 */
	Answer getInEngineSpace();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getInEngineSpace <em>In Engine Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Engine Space</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getInEngineSpace()
	 * @generated
	 */
	void setInEngineSpace(Answer value);

	/**
	 * Returns the value of the '<em><b>Conductors In Bundle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Conductors In Bundle</em>' attribute.
	 * @see #setConductorsInBundle(Integer)
	 * @see garboard.model.GarboardPackage#getCableRun_ConductorsInBundle()
	 * @generated
	 */
	Integer getConductorsInBundle();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getConductorsInBundle <em>Conductors In Bundle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conductors In Bundle</em>' attribute.
	 * @see #getConductorsInBundle()
	 * @generated
	 */
	void setConductorsInBundle(Integer value);

	/**
	 * Returns the value of the '<em><b>Conductor Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Conductor Temperature</em>' attribute.
	 * @see #setConductorTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getCableRun_ConductorTemperature()
	 * @generated
	 */
	Temperature getConductorTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getConductorTemperature <em>Conductor Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conductor Temperature</em>' attribute.
	 * @see #getConductorTemperature()
	 * @generated
	 */
	void setConductorTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Protection</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.ProtectionKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection</em>' attribute.
	 * @see garboard.model.ProtectionKind
	 * @see #setProtection(ProtectionKind)
	 * @see garboard.model.GarboardPackage#getCableRun_Protection()
	 * @generated
	 */
	ProtectionKind getProtection();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getProtection <em>Protection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection</em>' attribute.
	 * @see garboard.model.ProtectionKind
	 * @see #getProtection()
	 * @generated
	 */
	void setProtection(ProtectionKind value);

	/**
	 * Returns the value of the '<em><b>Protection Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Rating</em>' attribute.
	 * @see #setProtectionRating(Current)
	 * @see garboard.model.GarboardPackage#getCableRun_ProtectionRating()
	 * @generated
	 */
	Current getProtectionRating();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getProtectionRating <em>Protection Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Rating</em>' attribute.
	 * @see #getProtectionRating()
	 * @generated
	 */
	void setProtectionRating(Current value);

	/**
	 * Returns the value of the '<em><b>Protection Voltage Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Voltage Rating</em>' attribute.
	 * @see #setProtectionVoltageRating(Voltage)
	 * @see garboard.model.GarboardPackage#getCableRun_ProtectionVoltageRating()
	 * @generated
	 */
	Voltage getProtectionVoltageRating();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getProtectionVoltageRating <em>Protection Voltage Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Voltage Rating</em>' attribute.
	 * @see #getProtectionVoltageRating()
	 * @generated
	 */
	void setProtectionVoltageRating(Voltage value);

	/**
	 * Returns the value of the '<em><b>Protection Distance From Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Protection Distance From Source</em>' attribute.
	 * @see #setProtectionDistanceFromSource(Length)
	 * @see garboard.model.GarboardPackage#getCableRun_ProtectionDistanceFromSource()
	 * @generated
	 */
	Length getProtectionDistanceFromSource();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getProtectionDistanceFromSource <em>Protection Distance From Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protection Distance From Source</em>' attribute.
	 * @see #getProtectionDistanceFromSource()
	 * @generated
	 */
	void setProtectionDistanceFromSource(Length value);

	/**
	 * Returns the value of the '<em><b>Sheathed To Protection</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheathed To Protection</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSheathedToProtection(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_SheathedToProtection()
	 * @generated
	 */
	Answer getSheathedToProtection();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getSheathedToProtection <em>Sheathed To Protection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheathed To Protection</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSheathedToProtection()
	 * @generated
	 */
	void setSheathedToProtection(Answer value);

	/**
	 * Returns the value of the '<em><b>Connected To Battery Terminal</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Connected To Battery Terminal</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setConnectedToBatteryTerminal(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_ConnectedToBatteryTerminal()
	 * @generated
	 */
	Answer getConnectedToBatteryTerminal();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getConnectedToBatteryTerminal <em>Connected To Battery Terminal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Connected To Battery Terminal</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getConnectedToBatteryTerminal()
	 * @generated
	 */
	void setConnectedToBatteryTerminal(Answer value);

	/**
	 * Returns the value of the '<em><b>Support Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Support Spacing</em>' attribute.
	 * @see #setSupportSpacing(Length)
	 * @see garboard.model.GarboardPackage#getCableRun_SupportSpacing()
	 * @generated
	 */
	Length getSupportSpacing();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getSupportSpacing <em>Support Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Support Spacing</em>' attribute.
	 * @see #getSupportSpacing()
	 * @generated
	 */
	void setSupportSpacing(Length value);

	/**
	 * Returns the value of the '<em><b>Ring Terminals</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ring Terminals</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setRingTerminals(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_RingTerminals()
	 * @generated
	 */
	Answer getRingTerminals();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getRingTerminals <em>Ring Terminals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ring Terminals</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getRingTerminals()
	 * @generated
	 */
	void setRingTerminals(Answer value);

	/**
	 * Returns the value of the '<em><b>Lugs On Stud</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lugs On Stud</em>' attribute.
	 * @see #setLugsOnStud(Integer)
	 * @see garboard.model.GarboardPackage#getCableRun_LugsOnStud()
	 * @generated
	 */
	Integer getLugsOnStud();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getLugsOnStud <em>Lugs On Stud</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lugs On Stud</em>' attribute.
	 * @see #getLugsOnStud()
	 * @generated
	 */
	void setLugsOnStud(Integer value);

	/**
	 * Returns the value of the '<em><b>Chafe Protected</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Chafe Protected</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setChafeProtected(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_ChafeProtected()
	 * @generated
	 */
	Answer getChafeProtected();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getChafeProtected <em>Chafe Protected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chafe Protected</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getChafeProtected()
	 * @generated
	 */
	void setChafeProtected(Answer value);

	/**
	 * Returns the value of the '<em><b>Multi Strand Copper</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Multi Strand Copper</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setMultiStrandCopper(Answer)
	 * @see garboard.model.GarboardPackage#getCableRun_MultiStrandCopper()
	 * @generated
	 */
	Answer getMultiStrandCopper();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getMultiStrandCopper <em>Multi Strand Copper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Multi Strand Copper</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getMultiStrandCopper()
	 * @generated
	 */
	void setMultiStrandCopper(Answer value);

	/**
	 * Returns the value of the '<em><b>Measured Drop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Drop</em>' attribute.
	 * @see #setMeasuredDrop(Voltage)
	 * @see garboard.model.GarboardPackage#getCableRun_MeasuredDrop()
	 * @generated
	 */
	Voltage getMeasuredDrop();

	/**
	 * Sets the value of the '{@link garboard.model.CableRun#getMeasuredDrop <em>Measured Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Drop</em>' attribute.
	 * @see #getMeasuredDrop()
	 * @generated
	 */
	void setMeasuredDrop(Voltage value);

} // CableRun
