/**
 */
package garboard.model;

import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.Speed;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Vessel</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Vessel#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.Vessel#getIdentification <em>Identification</em>}</li>
 *   <li>{@link garboard.model.Vessel#getFlag <em>Flag</em>}</li>
 *   <li>{@link garboard.model.Vessel#getHullKind <em>Hull Kind</em>}</li>
 *   <li>{@link garboard.model.Vessel#getHullMaterial <em>Hull Material</em>}</li>
 *   <li>{@link garboard.model.Vessel#getService <em>Service</em>}</li>
 *   <li>{@link garboard.model.Vessel#getBuiltOn <em>Built On</em>}</li>
 *   <li>{@link garboard.model.Vessel#getLengthOverall <em>Length Overall</em>}</li>
 *   <li>{@link garboard.model.Vessel#getWaterlineLength <em>Waterline Length</em>}</li>
 *   <li>{@link garboard.model.Vessel#getBeam <em>Beam</em>}</li>
 *   <li>{@link garboard.model.Vessel#getDraught <em>Draught</em>}</li>
 *   <li>{@link garboard.model.Vessel#getFreeboardAmidships <em>Freeboard Amidships</em>}</li>
 *   <li>{@link garboard.model.Vessel#getPassengers <em>Passengers</em>}</li>
 *   <li>{@link garboard.model.Vessel#getOvernightPassengers <em>Overnight Passengers</em>}</li>
 *   <li>{@link garboard.model.Vessel#getSpeed <em>Speed</em>}</li>
 *   <li>{@link garboard.model.Vessel#getDesignHeel <em>Design Heel</em>}</li>
 *   <li>{@link garboard.model.Vessel#getDesignRoll <em>Design Roll</em>}</li>
 *   <li>{@link garboard.model.Vessel#getDesignTrim <em>Design Trim</em>}</li>
 *   <li>{@link garboard.model.Vessel#getSinkage <em>Sinkage</em>}</li>
 *   <li>{@link garboard.model.Vessel#getGasolineEngineAboard <em>Gasoline Engine Aboard</em>}</li>
 *   <li>{@link garboard.model.Vessel#getGasolineEngines <em>Gasoline Engines</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getVessel()
 * @generated
 */
public interface Vessel extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getVessel_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Identification</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Identification</em>' attribute.
	 * @see #setIdentification(String)
	 * @see garboard.model.GarboardPackage#getVessel_Identification()
	 * @generated
	 */
	String getIdentification();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getIdentification <em>Identification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Identification</em>' attribute.
	 * @see #getIdentification()
	 * @generated
	 */
	void setIdentification(String value);

	/**
	 * Returns the value of the '<em><b>Flag</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flag</em>' attribute.
	 * @see #setFlag(String)
	 * @see garboard.model.GarboardPackage#getVessel_Flag()
	 * @generated
	 */
	String getFlag();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getFlag <em>Flag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flag</em>' attribute.
	 * @see #getFlag()
	 * @generated
	 */
	void setFlag(String value);

	/**
	 * Returns the value of the '<em><b>Hull Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.HullKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hull Kind</em>' attribute.
	 * @see garboard.model.HullKind
	 * @see #setHullKind(HullKind)
	 * @see garboard.model.GarboardPackage#getVessel_HullKind()
	 * @generated
	 */
	HullKind getHullKind();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getHullKind <em>Hull Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hull Kind</em>' attribute.
	 * @see garboard.model.HullKind
	 * @see #getHullKind()
	 * @generated
	 */
	void setHullKind(HullKind value);

	/**
	 * Returns the value of the '<em><b>Hull Material</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.HullMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hull Material</em>' attribute.
	 * @see garboard.model.HullMaterial
	 * @see #setHullMaterial(HullMaterial)
	 * @see garboard.model.GarboardPackage#getVessel_HullMaterial()
	 * @generated
	 */
	HullMaterial getHullMaterial();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getHullMaterial <em>Hull Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hull Material</em>' attribute.
	 * @see garboard.model.HullMaterial
	 * @see #getHullMaterial()
	 * @generated
	 */
	void setHullMaterial(HullMaterial value);

	/**
	 * Returns the value of the '<em><b>Service</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.VesselService}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Service</em>' attribute.
	 * @see garboard.model.VesselService
	 * @see #setService(VesselService)
	 * @see garboard.model.GarboardPackage#getVessel_Service()
	 * @generated
	 */
	VesselService getService();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getService <em>Service</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Service</em>' attribute.
	 * @see garboard.model.VesselService
	 * @see #getService()
	 * @generated
	 */
	void setService(VesselService value);

	/**
	 * Returns the value of the '<em><b>Built On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Built On</em>' attribute.
	 * @see #setBuiltOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getVessel_BuiltOn()
	 * @generated
	 */
	LocalDate getBuiltOn();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getBuiltOn <em>Built On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Built On</em>' attribute.
	 * @see #getBuiltOn()
	 * @generated
	 */
	void setBuiltOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Length Overall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length Overall</em>' attribute.
	 * @see #setLengthOverall(Length)
	 * @see garboard.model.GarboardPackage#getVessel_LengthOverall()
	 * @generated
	 */
	Length getLengthOverall();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getLengthOverall <em>Length Overall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length Overall</em>' attribute.
	 * @see #getLengthOverall()
	 * @generated
	 */
	void setLengthOverall(Length value);

	/**
	 * Returns the value of the '<em><b>Waterline Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Waterline Length</em>' attribute.
	 * @see #setWaterlineLength(Length)
	 * @see garboard.model.GarboardPackage#getVessel_WaterlineLength()
	 * @generated
	 */
	Length getWaterlineLength();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getWaterlineLength <em>Waterline Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Waterline Length</em>' attribute.
	 * @see #getWaterlineLength()
	 * @generated
	 */
	void setWaterlineLength(Length value);

	/**
	 * Returns the value of the '<em><b>Beam</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Beam</em>' attribute.
	 * @see #setBeam(Length)
	 * @see garboard.model.GarboardPackage#getVessel_Beam()
	 * @generated
	 */
	Length getBeam();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getBeam <em>Beam</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Beam</em>' attribute.
	 * @see #getBeam()
	 * @generated
	 */
	void setBeam(Length value);

	/**
	 * Returns the value of the '<em><b>Draught</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Draught</em>' attribute.
	 * @see #setDraught(Length)
	 * @see garboard.model.GarboardPackage#getVessel_Draught()
	 * @generated
	 */
	Length getDraught();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getDraught <em>Draught</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Draught</em>' attribute.
	 * @see #getDraught()
	 * @generated
	 */
	void setDraught(Length value);

	/**
	 * Returns the value of the '<em><b>Freeboard Amidships</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Freeboard Amidships</em>' attribute.
	 * @see #setFreeboardAmidships(Length)
	 * @see garboard.model.GarboardPackage#getVessel_FreeboardAmidships()
	 * @generated
	 */
	Length getFreeboardAmidships();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getFreeboardAmidships <em>Freeboard Amidships</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Freeboard Amidships</em>' attribute.
	 * @see #getFreeboardAmidships()
	 * @generated
	 */
	void setFreeboardAmidships(Length value);

	/**
	 * Returns the value of the '<em><b>Passengers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Passengers</em>' attribute.
	 * @see #setPassengers(Integer)
	 * @see garboard.model.GarboardPackage#getVessel_Passengers()
	 * @generated
	 */
	Integer getPassengers();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getPassengers <em>Passengers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Passengers</em>' attribute.
	 * @see #getPassengers()
	 * @generated
	 */
	void setPassengers(Integer value);

	/**
	 * Returns the value of the '<em><b>Overnight Passengers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overnight Passengers</em>' attribute.
	 * @see #setOvernightPassengers(Integer)
	 * @see garboard.model.GarboardPackage#getVessel_OvernightPassengers()
	 * @generated
	 */
	Integer getOvernightPassengers();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getOvernightPassengers <em>Overnight Passengers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overnight Passengers</em>' attribute.
	 * @see #getOvernightPassengers()
	 * @generated
	 */
	void setOvernightPassengers(Integer value);

	/**
	 * Returns the value of the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Speed</em>' attribute.
	 * @see #setSpeed(Speed)
	 * @see garboard.model.GarboardPackage#getVessel_Speed()
	 * @generated
	 */
	Speed getSpeed();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getSpeed <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Speed</em>' attribute.
	 * @see #getSpeed()
	 * @generated
	 */
	void setSpeed(Speed value);

	/**
	 * Returns the value of the '<em><b>Design Heel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Design Heel</em>' attribute.
	 * @see #setDesignHeel(Angle)
	 * @see garboard.model.GarboardPackage#getVessel_DesignHeel()
	 * @generated
	 */
	Angle getDesignHeel();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getDesignHeel <em>Design Heel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Heel</em>' attribute.
	 * @see #getDesignHeel()
	 * @generated
	 */
	void setDesignHeel(Angle value);

	/**
	 * Returns the value of the '<em><b>Design Roll</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Design Roll</em>' attribute.
	 * @see #setDesignRoll(Angle)
	 * @see garboard.model.GarboardPackage#getVessel_DesignRoll()
	 * @generated
	 */
	Angle getDesignRoll();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getDesignRoll <em>Design Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Roll</em>' attribute.
	 * @see #getDesignRoll()
	 * @generated
	 */
	void setDesignRoll(Angle value);

	/**
	 * Returns the value of the '<em><b>Design Trim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Design Trim</em>' attribute.
	 * @see #setDesignTrim(Angle)
	 * @see garboard.model.GarboardPackage#getVessel_DesignTrim()
	 * @generated
	 */
	Angle getDesignTrim();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getDesignTrim <em>Design Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Trim</em>' attribute.
	 * @see #getDesignTrim()
	 * @generated
	 */
	void setDesignTrim(Angle value);

	/**
	 * Returns the value of the '<em><b>Sinkage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sinkage</em>' attribute.
	 * @see #setSinkage(Length)
	 * @see garboard.model.GarboardPackage#getVessel_Sinkage()
	 * @generated
	 */
	Length getSinkage();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getSinkage <em>Sinkage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sinkage</em>' attribute.
	 * @see #getSinkage()
	 * @generated
	 */
	void setSinkage(Length value);

	/**
	 * Returns the value of the '<em><b>Gasoline Engine Aboard</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gasoline Engine Aboard</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setGasolineEngineAboard(Answer)
	 * @see garboard.model.GarboardPackage#getVessel_GasolineEngineAboard()
	 * @generated
	 */
	Answer getGasolineEngineAboard();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getGasolineEngineAboard <em>Gasoline Engine Aboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gasoline Engine Aboard</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getGasolineEngineAboard()
	 * @generated
	 */
	void setGasolineEngineAboard(Answer value);

	/**
	 * Returns the value of the '<em><b>Gasoline Engines</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gasoline Engines</em>' attribute.
	 * @see #setGasolineEngines(Integer)
	 * @see garboard.model.GarboardPackage#getVessel_GasolineEngines()
	 * @generated
	 */
	Integer getGasolineEngines();

	/**
	 * Sets the value of the '{@link garboard.model.Vessel#getGasolineEngines <em>Gasoline Engines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gasoline Engines</em>' attribute.
	 * @see #getGasolineEngines()
	 * @generated
	 */
	void setGasolineEngines(Integer value);

} // Vessel
