/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Mounting;

import garboard.quantity.Angle;
import garboard.quantity.Length;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mounting</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.MountingImpl#getBedsRigid <em>Beds Rigid</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getMountsAligned <em>Mounts Aligned</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getClearanceAround <em>Clearance Around</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getFlexibleConnections <em>Flexible Connections</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getDripTray <em>Drip Tray</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getAccessForService <em>Access For Service</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getBondingConductor <em>Bonding Conductor</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getBondedToCommonGround <em>Bonded To Common Ground</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getCommonNegativeLink <em>Common Negative Link</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getDcNegativeIsolated <em>Dc Negative Isolated</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getInstalledAngleFore <em>Installed Angle Fore</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getInstalledAngleSide <em>Installed Angle Side</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getHeightAboveBilge <em>Height Above Bilge</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getAnodesFitted <em>Anodes Fitted</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getLabelsPosted <em>Labels Posted</em>}</li>
 *   <li>{@link garboard.model.impl.MountingImpl#getRotatingPartsGuarded <em>Rotating Parts Guarded</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MountingImpl extends MinimalEObjectImpl.Container implements Mounting {
	/**
	 * The default value of the '{@link #getBedsRigid() <em>Beds Rigid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedsRigid()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BEDS_RIGID_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBedsRigid() <em>Beds Rigid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedsRigid()
	 * @generated
	 * @ordered
	 */
	protected Answer bedsRigid = BEDS_RIGID_EDEFAULT;

	/**
	 * The default value of the '{@link #getMountsAligned() <em>Mounts Aligned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMountsAligned()
	 * @generated
	 * @ordered
	 */
	protected static final Answer MOUNTS_ALIGNED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getMountsAligned() <em>Mounts Aligned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMountsAligned()
	 * @generated
	 * @ordered
	 */
	protected Answer mountsAligned = MOUNTS_ALIGNED_EDEFAULT;

	/**
	 * The default value of the '{@link #getClearanceAround() <em>Clearance Around</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearanceAround()
	 * @generated
	 * @ordered
	 */
	protected static final Length CLEARANCE_AROUND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClearanceAround() <em>Clearance Around</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearanceAround()
	 * @generated
	 * @ordered
	 */
	protected Length clearanceAround = CLEARANCE_AROUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlexibleConnections() <em>Flexible Connections</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexibleConnections()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FLEXIBLE_CONNECTIONS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFlexibleConnections() <em>Flexible Connections</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexibleConnections()
	 * @generated
	 * @ordered
	 */
	protected Answer flexibleConnections = FLEXIBLE_CONNECTIONS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDripTray() <em>Drip Tray</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDripTray()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DRIP_TRAY_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDripTray() <em>Drip Tray</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDripTray()
	 * @generated
	 * @ordered
	 */
	protected Answer dripTray = DRIP_TRAY_EDEFAULT;

	/**
	 * The default value of the '{@link #getAccessForService() <em>Access For Service</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccessForService()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ACCESS_FOR_SERVICE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getAccessForService() <em>Access For Service</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccessForService()
	 * @generated
	 * @ordered
	 */
	protected Answer accessForService = ACCESS_FOR_SERVICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBondingConductor() <em>Bonding Conductor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondingConductor()
	 * @generated
	 * @ordered
	 */
	protected static final String BONDING_CONDUCTOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBondingConductor() <em>Bonding Conductor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondingConductor()
	 * @generated
	 * @ordered
	 */
	protected String bondingConductor = BONDING_CONDUCTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getBondedToCommonGround() <em>Bonded To Common Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondedToCommonGround()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BONDED_TO_COMMON_GROUND_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBondedToCommonGround() <em>Bonded To Common Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondedToCommonGround()
	 * @generated
	 * @ordered
	 */
	protected Answer bondedToCommonGround = BONDED_TO_COMMON_GROUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getCommonNegativeLink() <em>Common Negative Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCommonNegativeLink()
	 * @generated
	 * @ordered
	 */
	protected static final String COMMON_NEGATIVE_LINK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCommonNegativeLink() <em>Common Negative Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCommonNegativeLink()
	 * @generated
	 * @ordered
	 */
	protected String commonNegativeLink = COMMON_NEGATIVE_LINK_EDEFAULT;

	/**
	 * The default value of the '{@link #getDcNegativeIsolated() <em>Dc Negative Isolated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDcNegativeIsolated()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DC_NEGATIVE_ISOLATED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDcNegativeIsolated() <em>Dc Negative Isolated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDcNegativeIsolated()
	 * @generated
	 * @ordered
	 */
	protected Answer dcNegativeIsolated = DC_NEGATIVE_ISOLATED_EDEFAULT;

	/**
	 * The default value of the '{@link #getInstalledAngleFore() <em>Installed Angle Fore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledAngleFore()
	 * @generated
	 * @ordered
	 */
	protected static final Angle INSTALLED_ANGLE_FORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstalledAngleFore() <em>Installed Angle Fore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledAngleFore()
	 * @generated
	 * @ordered
	 */
	protected Angle installedAngleFore = INSTALLED_ANGLE_FORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInstalledAngleSide() <em>Installed Angle Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledAngleSide()
	 * @generated
	 * @ordered
	 */
	protected static final Angle INSTALLED_ANGLE_SIDE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstalledAngleSide() <em>Installed Angle Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledAngleSide()
	 * @generated
	 * @ordered
	 */
	protected Angle installedAngleSide = INSTALLED_ANGLE_SIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightAboveBilge() <em>Height Above Bilge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightAboveBilge()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEIGHT_ABOVE_BILGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightAboveBilge() <em>Height Above Bilge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightAboveBilge()
	 * @generated
	 * @ordered
	 */
	protected Length heightAboveBilge = HEIGHT_ABOVE_BILGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnodesFitted() <em>Anodes Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnodesFitted()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ANODES_FITTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getAnodesFitted() <em>Anodes Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnodesFitted()
	 * @generated
	 * @ordered
	 */
	protected Answer anodesFitted = ANODES_FITTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getLabelsPosted() <em>Labels Posted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelsPosted()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LABELS_POSTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLabelsPosted() <em>Labels Posted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelsPosted()
	 * @generated
	 * @ordered
	 */
	protected Answer labelsPosted = LABELS_POSTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getRotatingPartsGuarded() <em>Rotating Parts Guarded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRotatingPartsGuarded()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ROTATING_PARTS_GUARDED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getRotatingPartsGuarded() <em>Rotating Parts Guarded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRotatingPartsGuarded()
	 * @generated
	 * @ordered
	 */
	protected Answer rotatingPartsGuarded = ROTATING_PARTS_GUARDED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MountingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.MOUNTING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBedsRigid() {
		return bedsRigid;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBedsRigid(Answer newBedsRigid) {
		Answer oldBedsRigid = bedsRigid;
		bedsRigid = newBedsRigid == null ? BEDS_RIGID_EDEFAULT : newBedsRigid;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__BEDS_RIGID, oldBedsRigid, bedsRigid));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getMountsAligned() {
		return mountsAligned;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMountsAligned(Answer newMountsAligned) {
		Answer oldMountsAligned = mountsAligned;
		mountsAligned = newMountsAligned == null ? MOUNTS_ALIGNED_EDEFAULT : newMountsAligned;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__MOUNTS_ALIGNED, oldMountsAligned, mountsAligned));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getClearanceAround() {
		return clearanceAround;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearanceAround(Length newClearanceAround) {
		Length oldClearanceAround = clearanceAround;
		clearanceAround = newClearanceAround;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__CLEARANCE_AROUND, oldClearanceAround, clearanceAround));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFlexibleConnections() {
		return flexibleConnections;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlexibleConnections(Answer newFlexibleConnections) {
		Answer oldFlexibleConnections = flexibleConnections;
		flexibleConnections = newFlexibleConnections == null ? FLEXIBLE_CONNECTIONS_EDEFAULT : newFlexibleConnections;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__FLEXIBLE_CONNECTIONS, oldFlexibleConnections, flexibleConnections));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDripTray() {
		return dripTray;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDripTray(Answer newDripTray) {
		Answer oldDripTray = dripTray;
		dripTray = newDripTray == null ? DRIP_TRAY_EDEFAULT : newDripTray;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__DRIP_TRAY, oldDripTray, dripTray));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getAccessForService() {
		return accessForService;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccessForService(Answer newAccessForService) {
		Answer oldAccessForService = accessForService;
		accessForService = newAccessForService == null ? ACCESS_FOR_SERVICE_EDEFAULT : newAccessForService;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__ACCESS_FOR_SERVICE, oldAccessForService, accessForService));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBondingConductor() {
		return bondingConductor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBondingConductor(String newBondingConductor) {
		String oldBondingConductor = bondingConductor;
		bondingConductor = newBondingConductor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__BONDING_CONDUCTOR, oldBondingConductor, bondingConductor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBondedToCommonGround() {
		return bondedToCommonGround;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBondedToCommonGround(Answer newBondedToCommonGround) {
		Answer oldBondedToCommonGround = bondedToCommonGround;
		bondedToCommonGround = newBondedToCommonGround == null ? BONDED_TO_COMMON_GROUND_EDEFAULT : newBondedToCommonGround;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__BONDED_TO_COMMON_GROUND, oldBondedToCommonGround, bondedToCommonGround));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCommonNegativeLink() {
		return commonNegativeLink;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCommonNegativeLink(String newCommonNegativeLink) {
		String oldCommonNegativeLink = commonNegativeLink;
		commonNegativeLink = newCommonNegativeLink;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__COMMON_NEGATIVE_LINK, oldCommonNegativeLink, commonNegativeLink));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDcNegativeIsolated() {
		return dcNegativeIsolated;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDcNegativeIsolated(Answer newDcNegativeIsolated) {
		Answer oldDcNegativeIsolated = dcNegativeIsolated;
		dcNegativeIsolated = newDcNegativeIsolated == null ? DC_NEGATIVE_ISOLATED_EDEFAULT : newDcNegativeIsolated;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__DC_NEGATIVE_ISOLATED, oldDcNegativeIsolated, dcNegativeIsolated));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getInstalledAngleFore() {
		return installedAngleFore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstalledAngleFore(Angle newInstalledAngleFore) {
		Angle oldInstalledAngleFore = installedAngleFore;
		installedAngleFore = newInstalledAngleFore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__INSTALLED_ANGLE_FORE, oldInstalledAngleFore, installedAngleFore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getInstalledAngleSide() {
		return installedAngleSide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstalledAngleSide(Angle newInstalledAngleSide) {
		Angle oldInstalledAngleSide = installedAngleSide;
		installedAngleSide = newInstalledAngleSide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__INSTALLED_ANGLE_SIDE, oldInstalledAngleSide, installedAngleSide));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeightAboveBilge() {
		return heightAboveBilge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightAboveBilge(Length newHeightAboveBilge) {
		Length oldHeightAboveBilge = heightAboveBilge;
		heightAboveBilge = newHeightAboveBilge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__HEIGHT_ABOVE_BILGE, oldHeightAboveBilge, heightAboveBilge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getAnodesFitted() {
		return anodesFitted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnodesFitted(Answer newAnodesFitted) {
		Answer oldAnodesFitted = anodesFitted;
		anodesFitted = newAnodesFitted == null ? ANODES_FITTED_EDEFAULT : newAnodesFitted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__ANODES_FITTED, oldAnodesFitted, anodesFitted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLabelsPosted() {
		return labelsPosted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabelsPosted(Answer newLabelsPosted) {
		Answer oldLabelsPosted = labelsPosted;
		labelsPosted = newLabelsPosted == null ? LABELS_POSTED_EDEFAULT : newLabelsPosted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__LABELS_POSTED, oldLabelsPosted, labelsPosted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getRotatingPartsGuarded() {
		return rotatingPartsGuarded;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRotatingPartsGuarded(Answer newRotatingPartsGuarded) {
		Answer oldRotatingPartsGuarded = rotatingPartsGuarded;
		rotatingPartsGuarded = newRotatingPartsGuarded == null ? ROTATING_PARTS_GUARDED_EDEFAULT : newRotatingPartsGuarded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MOUNTING__ROTATING_PARTS_GUARDED, oldRotatingPartsGuarded, rotatingPartsGuarded));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.MOUNTING__BEDS_RIGID:
				return getBedsRigid();
			case GarboardPackage.MOUNTING__MOUNTS_ALIGNED:
				return getMountsAligned();
			case GarboardPackage.MOUNTING__CLEARANCE_AROUND:
				return getClearanceAround();
			case GarboardPackage.MOUNTING__FLEXIBLE_CONNECTIONS:
				return getFlexibleConnections();
			case GarboardPackage.MOUNTING__DRIP_TRAY:
				return getDripTray();
			case GarboardPackage.MOUNTING__ACCESS_FOR_SERVICE:
				return getAccessForService();
			case GarboardPackage.MOUNTING__BONDING_CONDUCTOR:
				return getBondingConductor();
			case GarboardPackage.MOUNTING__BONDED_TO_COMMON_GROUND:
				return getBondedToCommonGround();
			case GarboardPackage.MOUNTING__COMMON_NEGATIVE_LINK:
				return getCommonNegativeLink();
			case GarboardPackage.MOUNTING__DC_NEGATIVE_ISOLATED:
				return getDcNegativeIsolated();
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_FORE:
				return getInstalledAngleFore();
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_SIDE:
				return getInstalledAngleSide();
			case GarboardPackage.MOUNTING__HEIGHT_ABOVE_BILGE:
				return getHeightAboveBilge();
			case GarboardPackage.MOUNTING__ANODES_FITTED:
				return getAnodesFitted();
			case GarboardPackage.MOUNTING__LABELS_POSTED:
				return getLabelsPosted();
			case GarboardPackage.MOUNTING__ROTATING_PARTS_GUARDED:
				return getRotatingPartsGuarded();
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
			case GarboardPackage.MOUNTING__BEDS_RIGID:
				setBedsRigid((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__MOUNTS_ALIGNED:
				setMountsAligned((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__CLEARANCE_AROUND:
				setClearanceAround((Length)newValue);
				return;
			case GarboardPackage.MOUNTING__FLEXIBLE_CONNECTIONS:
				setFlexibleConnections((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__DRIP_TRAY:
				setDripTray((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__ACCESS_FOR_SERVICE:
				setAccessForService((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__BONDING_CONDUCTOR:
				setBondingConductor((String)newValue);
				return;
			case GarboardPackage.MOUNTING__BONDED_TO_COMMON_GROUND:
				setBondedToCommonGround((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__COMMON_NEGATIVE_LINK:
				setCommonNegativeLink((String)newValue);
				return;
			case GarboardPackage.MOUNTING__DC_NEGATIVE_ISOLATED:
				setDcNegativeIsolated((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_FORE:
				setInstalledAngleFore((Angle)newValue);
				return;
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_SIDE:
				setInstalledAngleSide((Angle)newValue);
				return;
			case GarboardPackage.MOUNTING__HEIGHT_ABOVE_BILGE:
				setHeightAboveBilge((Length)newValue);
				return;
			case GarboardPackage.MOUNTING__ANODES_FITTED:
				setAnodesFitted((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__LABELS_POSTED:
				setLabelsPosted((Answer)newValue);
				return;
			case GarboardPackage.MOUNTING__ROTATING_PARTS_GUARDED:
				setRotatingPartsGuarded((Answer)newValue);
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
			case GarboardPackage.MOUNTING__BEDS_RIGID:
				setBedsRigid(BEDS_RIGID_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__MOUNTS_ALIGNED:
				setMountsAligned(MOUNTS_ALIGNED_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__CLEARANCE_AROUND:
				setClearanceAround(CLEARANCE_AROUND_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__FLEXIBLE_CONNECTIONS:
				setFlexibleConnections(FLEXIBLE_CONNECTIONS_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__DRIP_TRAY:
				setDripTray(DRIP_TRAY_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__ACCESS_FOR_SERVICE:
				setAccessForService(ACCESS_FOR_SERVICE_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__BONDING_CONDUCTOR:
				setBondingConductor(BONDING_CONDUCTOR_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__BONDED_TO_COMMON_GROUND:
				setBondedToCommonGround(BONDED_TO_COMMON_GROUND_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__COMMON_NEGATIVE_LINK:
				setCommonNegativeLink(COMMON_NEGATIVE_LINK_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__DC_NEGATIVE_ISOLATED:
				setDcNegativeIsolated(DC_NEGATIVE_ISOLATED_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_FORE:
				setInstalledAngleFore(INSTALLED_ANGLE_FORE_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_SIDE:
				setInstalledAngleSide(INSTALLED_ANGLE_SIDE_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__HEIGHT_ABOVE_BILGE:
				setHeightAboveBilge(HEIGHT_ABOVE_BILGE_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__ANODES_FITTED:
				setAnodesFitted(ANODES_FITTED_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__LABELS_POSTED:
				setLabelsPosted(LABELS_POSTED_EDEFAULT);
				return;
			case GarboardPackage.MOUNTING__ROTATING_PARTS_GUARDED:
				setRotatingPartsGuarded(ROTATING_PARTS_GUARDED_EDEFAULT);
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
			case GarboardPackage.MOUNTING__BEDS_RIGID:
				return bedsRigid != BEDS_RIGID_EDEFAULT;
			case GarboardPackage.MOUNTING__MOUNTS_ALIGNED:
				return mountsAligned != MOUNTS_ALIGNED_EDEFAULT;
			case GarboardPackage.MOUNTING__CLEARANCE_AROUND:
				return CLEARANCE_AROUND_EDEFAULT == null ? clearanceAround != null : !CLEARANCE_AROUND_EDEFAULT.equals(clearanceAround);
			case GarboardPackage.MOUNTING__FLEXIBLE_CONNECTIONS:
				return flexibleConnections != FLEXIBLE_CONNECTIONS_EDEFAULT;
			case GarboardPackage.MOUNTING__DRIP_TRAY:
				return dripTray != DRIP_TRAY_EDEFAULT;
			case GarboardPackage.MOUNTING__ACCESS_FOR_SERVICE:
				return accessForService != ACCESS_FOR_SERVICE_EDEFAULT;
			case GarboardPackage.MOUNTING__BONDING_CONDUCTOR:
				return BONDING_CONDUCTOR_EDEFAULT == null ? bondingConductor != null : !BONDING_CONDUCTOR_EDEFAULT.equals(bondingConductor);
			case GarboardPackage.MOUNTING__BONDED_TO_COMMON_GROUND:
				return bondedToCommonGround != BONDED_TO_COMMON_GROUND_EDEFAULT;
			case GarboardPackage.MOUNTING__COMMON_NEGATIVE_LINK:
				return COMMON_NEGATIVE_LINK_EDEFAULT == null ? commonNegativeLink != null : !COMMON_NEGATIVE_LINK_EDEFAULT.equals(commonNegativeLink);
			case GarboardPackage.MOUNTING__DC_NEGATIVE_ISOLATED:
				return dcNegativeIsolated != DC_NEGATIVE_ISOLATED_EDEFAULT;
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_FORE:
				return INSTALLED_ANGLE_FORE_EDEFAULT == null ? installedAngleFore != null : !INSTALLED_ANGLE_FORE_EDEFAULT.equals(installedAngleFore);
			case GarboardPackage.MOUNTING__INSTALLED_ANGLE_SIDE:
				return INSTALLED_ANGLE_SIDE_EDEFAULT == null ? installedAngleSide != null : !INSTALLED_ANGLE_SIDE_EDEFAULT.equals(installedAngleSide);
			case GarboardPackage.MOUNTING__HEIGHT_ABOVE_BILGE:
				return HEIGHT_ABOVE_BILGE_EDEFAULT == null ? heightAboveBilge != null : !HEIGHT_ABOVE_BILGE_EDEFAULT.equals(heightAboveBilge);
			case GarboardPackage.MOUNTING__ANODES_FITTED:
				return anodesFitted != ANODES_FITTED_EDEFAULT;
			case GarboardPackage.MOUNTING__LABELS_POSTED:
				return labelsPosted != LABELS_POSTED_EDEFAULT;
			case GarboardPackage.MOUNTING__ROTATING_PARTS_GUARDED:
				return rotatingPartsGuarded != ROTATING_PARTS_GUARDED_EDEFAULT;
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
		result.append(" (bedsRigid: ");
		result.append(bedsRigid);
		result.append(", mountsAligned: ");
		result.append(mountsAligned);
		result.append(", clearanceAround: ");
		result.append(clearanceAround);
		result.append(", flexibleConnections: ");
		result.append(flexibleConnections);
		result.append(", dripTray: ");
		result.append(dripTray);
		result.append(", accessForService: ");
		result.append(accessForService);
		result.append(", bondingConductor: ");
		result.append(bondingConductor);
		result.append(", bondedToCommonGround: ");
		result.append(bondedToCommonGround);
		result.append(", commonNegativeLink: ");
		result.append(commonNegativeLink);
		result.append(", dcNegativeIsolated: ");
		result.append(dcNegativeIsolated);
		result.append(", installedAngleFore: ");
		result.append(installedAngleFore);
		result.append(", installedAngleSide: ");
		result.append(installedAngleSide);
		result.append(", heightAboveBilge: ");
		result.append(heightAboveBilge);
		result.append(", anodesFitted: ");
		result.append(anodesFitted);
		result.append(", labelsPosted: ");
		result.append(labelsPosted);
		result.append(", rotatingPartsGuarded: ");
		result.append(rotatingPartsGuarded);
		result.append(')');
		return result.toString();
	}

} //MountingImpl
