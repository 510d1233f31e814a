/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.HullKind;
import garboard.model.HullMaterial;
import garboard.model.Vessel;
import garboard.model.VesselService;

import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.Speed;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Vessel</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.VesselImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getIdentification <em>Identification</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getFlag <em>Flag</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getHullKind <em>Hull Kind</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getHullMaterial <em>Hull Material</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getService <em>Service</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getBuiltOn <em>Built On</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getLengthOverall <em>Length Overall</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getWaterlineLength <em>Waterline Length</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getBeam <em>Beam</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getDraught <em>Draught</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getFreeboardAmidships <em>Freeboard Amidships</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getPassengers <em>Passengers</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getOvernightPassengers <em>Overnight Passengers</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getSpeed <em>Speed</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getDesignHeel <em>Design Heel</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getDesignRoll <em>Design Roll</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getDesignTrim <em>Design Trim</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getSinkage <em>Sinkage</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getGasolineEngineAboard <em>Gasoline Engine Aboard</em>}</li>
 *   <li>{@link garboard.model.impl.VesselImpl#getGasolineEngines <em>Gasoline Engines</em>}</li>
 * </ul>
 *
 * @generated
 */
public class VesselImpl extends MinimalEObjectImpl.Container implements Vessel {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getIdentification() <em>Identification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIdentification()
	 * @generated
	 * @ordered
	 */
	protected static final String IDENTIFICATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIdentification() <em>Identification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIdentification()
	 * @generated
	 * @ordered
	 */
	protected String identification = IDENTIFICATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlag() <em>Flag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlag()
	 * @generated
	 * @ordered
	 */
	protected static final String FLAG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlag() <em>Flag</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlag()
	 * @generated
	 * @ordered
	 */
	protected String flag = FLAG_EDEFAULT;

	/**
	 * The default value of the '{@link #getHullKind() <em>Hull Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHullKind()
	 * @generated
	 * @ordered
	 */
	protected static final HullKind HULL_KIND_EDEFAULT = HullKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getHullKind() <em>Hull Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHullKind()
	 * @generated
	 * @ordered
	 */
	protected HullKind hullKind = HULL_KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getHullMaterial() <em>Hull Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHullMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final HullMaterial HULL_MATERIAL_EDEFAULT = HullMaterial.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getHullMaterial() <em>Hull Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHullMaterial()
	 * @generated
	 * @ordered
	 */
	protected HullMaterial hullMaterial = HULL_MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getService() <em>Service</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getService()
	 * @generated
	 * @ordered
	 */
	protected static final VesselService SERVICE_EDEFAULT = VesselService.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getService() <em>Service</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getService()
	 * @generated
	 * @ordered
	 */
	protected VesselService service = SERVICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBuiltOn() <em>Built On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuiltOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate BUILT_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBuiltOn() <em>Built On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuiltOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate builtOn = BUILT_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getLengthOverall() <em>Length Overall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLengthOverall()
	 * @generated
	 * @ordered
	 */
	protected static final Length LENGTH_OVERALL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLengthOverall() <em>Length Overall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLengthOverall()
	 * @generated
	 * @ordered
	 */
	protected Length lengthOverall = LENGTH_OVERALL_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterlineLength() <em>Waterline Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterlineLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length WATERLINE_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWaterlineLength() <em>Waterline Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterlineLength()
	 * @generated
	 * @ordered
	 */
	protected Length waterlineLength = WATERLINE_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getBeam() <em>Beam</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeam()
	 * @generated
	 * @ordered
	 */
	protected static final Length BEAM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBeam() <em>Beam</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeam()
	 * @generated
	 * @ordered
	 */
	protected Length beam = BEAM_EDEFAULT;

	/**
	 * The default value of the '{@link #getDraught() <em>Draught</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDraught()
	 * @generated
	 * @ordered
	 */
	protected static final Length DRAUGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDraught() <em>Draught</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDraught()
	 * @generated
	 * @ordered
	 */
	protected Length draught = DRAUGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFreeboardAmidships() <em>Freeboard Amidships</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFreeboardAmidships()
	 * @generated
	 * @ordered
	 */
	protected static final Length FREEBOARD_AMIDSHIPS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFreeboardAmidships() <em>Freeboard Amidships</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFreeboardAmidships()
	 * @generated
	 * @ordered
	 */
	protected Length freeboardAmidships = FREEBOARD_AMIDSHIPS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPassengers() <em>Passengers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPassengers()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PASSENGERS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPassengers() <em>Passengers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPassengers()
	 * @generated
	 * @ordered
	 */
	protected Integer passengers = PASSENGERS_EDEFAULT;

	/**
	 * The default value of the '{@link #getOvernightPassengers() <em>Overnight Passengers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOvernightPassengers()
	 * @generated
	 * @ordered
	 */
	protected static final Integer OVERNIGHT_PASSENGERS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOvernightPassengers() <em>Overnight Passengers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOvernightPassengers()
	 * @generated
	 * @ordered
	 */
	protected Integer overnightPassengers = OVERNIGHT_PASSENGERS_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpeed() <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final Speed SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpeed() <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeed()
	 * @generated
	 * @ordered
	 */
	protected Speed speed = SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesignHeel() <em>Design Heel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignHeel()
	 * @generated
	 * @ordered
	 */
	protected static final Angle DESIGN_HEEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignHeel() <em>Design Heel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignHeel()
	 * @generated
	 * @ordered
	 */
	protected Angle designHeel = DESIGN_HEEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesignRoll() <em>Design Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignRoll()
	 * @generated
	 * @ordered
	 */
	protected static final Angle DESIGN_ROLL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignRoll() <em>Design Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignRoll()
	 * @generated
	 * @ordered
	 */
	protected Angle designRoll = DESIGN_ROLL_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesignTrim() <em>Design Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignTrim()
	 * @generated
	 * @ordered
	 */
	protected static final Angle DESIGN_TRIM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignTrim() <em>Design Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignTrim()
	 * @generated
	 * @ordered
	 */
	protected Angle designTrim = DESIGN_TRIM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSinkage() <em>Sinkage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSinkage()
	 * @generated
	 * @ordered
	 */
	protected static final Length SINKAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSinkage() <em>Sinkage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSinkage()
	 * @generated
	 * @ordered
	 */
	protected Length sinkage = SINKAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGasolineEngineAboard() <em>Gasoline Engine Aboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasolineEngineAboard()
	 * @generated
	 * @ordered
	 */
	protected static final Answer GASOLINE_ENGINE_ABOARD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getGasolineEngineAboard() <em>Gasoline Engine Aboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasolineEngineAboard()
	 * @generated
	 * @ordered
	 */
	protected Answer gasolineEngineAboard = GASOLINE_ENGINE_ABOARD_EDEFAULT;

	/**
	 * The default value of the '{@link #getGasolineEngines() <em>Gasoline Engines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasolineEngines()
	 * @generated
	 * @ordered
	 */
	protected static final Integer GASOLINE_ENGINES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGasolineEngines() <em>Gasoline Engines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasolineEngines()
	 * @generated
	 * @ordered
	 */
	protected Integer gasolineEngines = GASOLINE_ENGINES_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected VesselImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.VESSEL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getIdentification() {
		return identification;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIdentification(String newIdentification) {
		String oldIdentification = identification;
		identification = newIdentification;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__IDENTIFICATION, oldIdentification, identification));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFlag() {
		return flag;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlag(String newFlag) {
		String oldFlag = flag;
		flag = newFlag;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__FLAG, oldFlag, flag));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HullKind getHullKind() {
		return hullKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHullKind(HullKind newHullKind) {
		HullKind oldHullKind = hullKind;
		hullKind = newHullKind == null ? HULL_KIND_EDEFAULT : newHullKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__HULL_KIND, oldHullKind, hullKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HullMaterial getHullMaterial() {
		return hullMaterial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHullMaterial(HullMaterial newHullMaterial) {
		HullMaterial oldHullMaterial = hullMaterial;
		hullMaterial = newHullMaterial == null ? HULL_MATERIAL_EDEFAULT : newHullMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__HULL_MATERIAL, oldHullMaterial, hullMaterial));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VesselService getService() {
		return service;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setService(VesselService newService) {
		VesselService oldService = service;
		service = newService == null ? SERVICE_EDEFAULT : newService;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__SERVICE, oldService, service));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getBuiltOn() {
		return builtOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuiltOn(LocalDate newBuiltOn) {
		LocalDate oldBuiltOn = builtOn;
		builtOn = newBuiltOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__BUILT_ON, oldBuiltOn, builtOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLengthOverall() {
		return lengthOverall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLengthOverall(Length newLengthOverall) {
		Length oldLengthOverall = lengthOverall;
		lengthOverall = newLengthOverall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__LENGTH_OVERALL, oldLengthOverall, lengthOverall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getWaterlineLength() {
		return waterlineLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterlineLength(Length newWaterlineLength) {
		Length oldWaterlineLength = waterlineLength;
		waterlineLength = newWaterlineLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__WATERLINE_LENGTH, oldWaterlineLength, waterlineLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBeam() {
		return beam;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBeam(Length newBeam) {
		Length oldBeam = beam;
		beam = newBeam;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__BEAM, oldBeam, beam));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getDraught() {
		return draught;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDraught(Length newDraught) {
		Length oldDraught = draught;
		draught = newDraught;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__DRAUGHT, oldDraught, draught));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFreeboardAmidships() {
		return freeboardAmidships;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFreeboardAmidships(Length newFreeboardAmidships) {
		Length oldFreeboardAmidships = freeboardAmidships;
		freeboardAmidships = newFreeboardAmidships;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__FREEBOARD_AMIDSHIPS, oldFreeboardAmidships, freeboardAmidships));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPassengers() {
		return passengers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPassengers(Integer newPassengers) {
		Integer oldPassengers = passengers;
		passengers = newPassengers;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__PASSENGERS, oldPassengers, passengers));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getOvernightPassengers() {
		return overnightPassengers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOvernightPassengers(Integer newOvernightPassengers) {
		Integer oldOvernightPassengers = overnightPassengers;
		overnightPassengers = newOvernightPassengers;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__OVERNIGHT_PASSENGERS, oldOvernightPassengers, overnightPassengers));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Speed getSpeed() {
		return speed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpeed(Speed newSpeed) {
		Speed oldSpeed = speed;
		speed = newSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__SPEED, oldSpeed, speed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getDesignHeel() {
		return designHeel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignHeel(Angle newDesignHeel) {
		Angle oldDesignHeel = designHeel;
		designHeel = newDesignHeel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__DESIGN_HEEL, oldDesignHeel, designHeel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getDesignRoll() {
		return designRoll;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignRoll(Angle newDesignRoll) {
		Angle oldDesignRoll = designRoll;
		designRoll = newDesignRoll;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__DESIGN_ROLL, oldDesignRoll, designRoll));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getDesignTrim() {
		return designTrim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignTrim(Angle newDesignTrim) {
		Angle oldDesignTrim = designTrim;
		designTrim = newDesignTrim;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__DESIGN_TRIM, oldDesignTrim, designTrim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSinkage() {
		return sinkage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSinkage(Length newSinkage) {
		Length oldSinkage = sinkage;
		sinkage = newSinkage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__SINKAGE, oldSinkage, sinkage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getGasolineEngineAboard() {
		return gasolineEngineAboard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGasolineEngineAboard(Answer newGasolineEngineAboard) {
		Answer oldGasolineEngineAboard = gasolineEngineAboard;
		gasolineEngineAboard = newGasolineEngineAboard == null ? GASOLINE_ENGINE_ABOARD_EDEFAULT : newGasolineEngineAboard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__GASOLINE_ENGINE_ABOARD, oldGasolineEngineAboard, gasolineEngineAboard));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getGasolineEngines() {
		return gasolineEngines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGasolineEngines(Integer newGasolineEngines) {
		Integer oldGasolineEngines = gasolineEngines;
		gasolineEngines = newGasolineEngines;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.VESSEL__GASOLINE_ENGINES, oldGasolineEngines, gasolineEngines));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.VESSEL__NAME:
				return getName();
			case GarboardPackage.VESSEL__IDENTIFICATION:
				return getIdentification();
			case GarboardPackage.VESSEL__FLAG:
				return getFlag();
			case GarboardPackage.VESSEL__HULL_KIND:
				return getHullKind();
			case GarboardPackage.VESSEL__HULL_MATERIAL:
				return getHullMaterial();
			case GarboardPackage.VESSEL__SERVICE:
				return getService();
			case GarboardPackage.VESSEL__BUILT_ON:
				return getBuiltOn();
			case GarboardPackage.VESSEL__LENGTH_OVERALL:
				return getLengthOverall();
			case GarboardPackage.VESSEL__WATERLINE_LENGTH:
				return getWaterlineLength();
			case GarboardPackage.VESSEL__BEAM:
				return getBeam();
			case GarboardPackage.VESSEL__DRAUGHT:
				return getDraught();
			case GarboardPackage.VESSEL__FREEBOARD_AMIDSHIPS:
				return getFreeboardAmidships();
			case GarboardPackage.VESSEL__PASSENGERS:
				return getPassengers();
			case GarboardPackage.VESSEL__OVERNIGHT_PASSENGERS:
				return getOvernightPassengers();
			case GarboardPackage.VESSEL__SPEED:
				return getSpeed();
			case GarboardPackage.VESSEL__DESIGN_HEEL:
				return getDesignHeel();
			case GarboardPackage.VESSEL__DESIGN_ROLL:
				return getDesignRoll();
			case GarboardPackage.VESSEL__DESIGN_TRIM:
				return getDesignTrim();
			case GarboardPackage.VESSEL__SINKAGE:
				return getSinkage();
			case GarboardPackage.VESSEL__GASOLINE_ENGINE_ABOARD:
				return getGasolineEngineAboard();
			case GarboardPackage.VESSEL__GASOLINE_ENGINES:
				return getGasolineEngines();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.VESSEL__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.VESSEL__IDENTIFICATION:
				setIdentification((String)newValue);
				return;
			case GarboardPackage.VESSEL__FLAG:
				setFlag((String)newValue);
				return;
			case GarboardPackage.VESSEL__HULL_KIND:
				setHullKind((HullKind)newValue);
				return;
			case GarboardPackage.VESSEL__HULL_MATERIAL:
				setHullMaterial((HullMaterial)newValue);
				return;
			case GarboardPackage.VESSEL__SERVICE:
				setService((VesselService)newValue);
				return;
			case GarboardPackage.VESSEL__BUILT_ON:
				setBuiltOn((LocalDate)newValue);
				return;
			case GarboardPackage.VESSEL__LENGTH_OVERALL:
				setLengthOverall((Length)newValue);
				return;
			case GarboardPackage.VESSEL__WATERLINE_LENGTH:
				setWaterlineLength((Length)newValue);
				return;
			case GarboardPackage.VESSEL__BEAM:
				setBeam((Length)newValue);
				return;
			case GarboardPackage.VESSEL__DRAUGHT:
				setDraught((Length)newValue);
				return;
			case GarboardPackage.VESSEL__FREEBOARD_AMIDSHIPS:
				setFreeboardAmidships((Length)newValue);
				return;
			case GarboardPackage.VESSEL__PASSENGERS:
				setPassengers((Integer)newValue);
				return;
			case GarboardPackage.VESSEL__OVERNIGHT_PASSENGERS:
				setOvernightPassengers((Integer)newValue);
				return;
			case GarboardPackage.VESSEL__SPEED:
				setSpeed((Speed)newValue);
				return;
			case GarboardPackage.VESSEL__DESIGN_HEEL:
				setDesignHeel((Angle)newValue);
				return;
			case GarboardPackage.VESSEL__DESIGN_ROLL:
				setDesignRoll((Angle)newValue);
				return;
			case GarboardPackage.VESSEL__DESIGN_TRIM:
				setDesignTrim((Angle)newValue);
				return;
			case GarboardPackage.VESSEL__SINKAGE:
				setSinkage((Length)newValue);
				return;
			case GarboardPackage.VESSEL__GASOLINE_ENGINE_ABOARD:
				setGasolineEngineAboard((Answer)newValue);
				return;
			case GarboardPackage.VESSEL__GASOLINE_ENGINES:
				setGasolineEngines((Integer)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case GarboardPackage.VESSEL__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__IDENTIFICATION:
				setIdentification(IDENTIFICATION_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__FLAG:
				setFlag(FLAG_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__HULL_KIND:
				setHullKind(HULL_KIND_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__HULL_MATERIAL:
				setHullMaterial(HULL_MATERIAL_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__SERVICE:
				setService(SERVICE_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__BUILT_ON:
				setBuiltOn(BUILT_ON_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__LENGTH_OVERALL:
				setLengthOverall(LENGTH_OVERALL_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__WATERLINE_LENGTH:
				setWaterlineLength(WATERLINE_LENGTH_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__BEAM:
				setBeam(BEAM_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__DRAUGHT:
				setDraught(DRAUGHT_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__FREEBOARD_AMIDSHIPS:
				setFreeboardAmidships(FREEBOARD_AMIDSHIPS_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__PASSENGERS:
				setPassengers(PASSENGERS_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__OVERNIGHT_PASSENGERS:
				setOvernightPassengers(OVERNIGHT_PASSENGERS_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__SPEED:
				setSpeed(SPEED_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__DESIGN_HEEL:
				setDesignHeel(DESIGN_HEEL_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__DESIGN_ROLL:
				setDesignRoll(DESIGN_ROLL_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__DESIGN_TRIM:
				setDesignTrim(DESIGN_TRIM_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__SINKAGE:
				setSinkage(SINKAGE_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__GASOLINE_ENGINE_ABOARD:
				setGasolineEngineAboard(GASOLINE_ENGINE_ABOARD_EDEFAULT);
				return;
			case GarboardPackage.VESSEL__GASOLINE_ENGINES:
				setGasolineEngines(GASOLINE_ENGINES_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case GarboardPackage.VESSEL__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.VESSEL__IDENTIFICATION:
				return IDENTIFICATION_EDEFAULT == null ? identification != null : !IDENTIFICATION_EDEFAULT.equals(identification);
			case GarboardPackage.VESSEL__FLAG:
				return FLAG_EDEFAULT == null ? flag != null : !FLAG_EDEFAULT.equals(flag);
			case GarboardPackage.VESSEL__HULL_KIND:
				return hullKind != HULL_KIND_EDEFAULT;
			case GarboardPackage.VESSEL__HULL_MATERIAL:
				return hullMaterial != HULL_MATERIAL_EDEFAULT;
			case GarboardPackage.VESSEL__SERVICE:
				return service != SERVICE_EDEFAULT;
			case GarboardPackage.VESSEL__BUILT_ON:
				return BUILT_ON_EDEFAULT == null ? builtOn != null : !BUILT_ON_EDEFAULT.equals(builtOn);
			case GarboardPackage.VESSEL__LENGTH_OVERALL:
				return LENGTH_OVERALL_EDEFAULT == null ? lengthOverall != null : !LENGTH_OVERALL_EDEFAULT.equals(lengthOverall);
			case GarboardPackage.VESSEL__WATERLINE_LENGTH:
				return WATERLINE_LENGTH_EDEFAULT == null ? waterlineLength != null : !WATERLINE_LENGTH_EDEFAULT.equals(waterlineLength);
			case GarboardPackage.VESSEL__BEAM:
				return BEAM_EDEFAULT == null ? beam != null : !BEAM_EDEFAULT.equals(beam);
			case GarboardPackage.VESSEL__DRAUGHT:
				return DRAUGHT_EDEFAULT == null ? draught != null : !DRAUGHT_EDEFAULT.equals(draught);
			case GarboardPackage.VESSEL__FREEBOARD_AMIDSHIPS:
				return FREEBOARD_AMIDSHIPS_EDEFAULT == null ? freeboardAmidships != null : !FREEBOARD_AMIDSHIPS_EDEFAULT.equals(freeboardAmidships);
			case GarboardPackage.VESSEL__PASSENGERS:
				return PASSENGERS_EDEFAULT == null ? passengers != null : !PASSENGERS_EDEFAULT.equals(passengers);
			case GarboardPackage.VESSEL__OVERNIGHT_PASSENGERS:
				return OVERNIGHT_PASSENGERS_EDEFAULT == null ? overnightPassengers != null : !OVERNIGHT_PASSENGERS_EDEFAULT.equals(overnightPassengers);
			case GarboardPackage.VESSEL__SPEED:
				return SPEED_EDEFAULT == null ? speed != null : !SPEED_EDEFAULT.equals(speed);
			case GarboardPackage.VESSEL__DESIGN_HEEL:
				return DESIGN_HEEL_EDEFAULT == null ? designHeel != null : !DESIGN_HEEL_EDEFAULT.equals(designHeel);
			case GarboardPackage.VESSEL__DESIGN_ROLL:
				return DESIGN_ROLL_EDEFAULT == null ? designRoll != null : !DESIGN_ROLL_EDEFAULT.equals(designRoll);
			case GarboardPackage.VESSEL__DESIGN_TRIM:
				return DESIGN_TRIM_EDEFAULT == null ? designTrim != null : !DESIGN_TRIM_EDEFAULT.equals(designTrim);
			case GarboardPackage.VESSEL__SINKAGE:
				return SINKAGE_EDEFAULT == null ? sinkage != null : !SINKAGE_EDEFAULT.equals(sinkage);
			case GarboardPackage.VESSEL__GASOLINE_ENGINE_ABOARD:
				return gasolineEngineAboard != GASOLINE_ENGINE_ABOARD_EDEFAULT;
			case GarboardPackage.VESSEL__GASOLINE_ENGINES:
				return GASOLINE_ENGINES_EDEFAULT == null ? gasolineEngines != null : !GASOLINE_ENGINES_EDEFAULT.equals(gasolineEngines);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (name: ");
		result.append(name);
		result.append(", identification: ");
		result.append(identification);
		result.append(", flag: ");
		result.append(flag);
		result.append(", hullKind: ");
		result.append(hullKind);
		result.append(", hullMaterial: ");
		result.append(hullMaterial);
		result.append(", service: ");
		result.append(service);
		result.append(", builtOn: ");
		result.append(builtOn);
		result.append(", lengthOverall: ");
		result.append(lengthOverall);
		result.append(", waterlineLength: ");
		result.append(waterlineLength);
		result.append(", beam: ");
		result.append(beam);
		result.append(", draught: ");
		result.append(draught);
		result.append(", freeboardAmidships: ");
		result.append(freeboardAmidships);
		result.append(", passengers: ");
		result.append(passengers);
		result.append(", overnightPassengers: ");
		result.append(overnightPassengers);
		result.append(", speed: ");
		result.append(speed);
		result.append(", designHeel: ");
		result.append(designHeel);
		result.append(", designRoll: ");
		result.append(designRoll);
		result.append(", designTrim: ");
		result.append(designTrim);
		result.append(", sinkage: ");
		result.append(sinkage);
		result.append(", gasolineEngineAboard: ");
		result.append(gasolineEngineAboard);
		result.append(", gasolineEngines: ");
		result.append(gasolineEngines);
		result.append(')');
		return result.toString();
	}

} //VesselImpl
