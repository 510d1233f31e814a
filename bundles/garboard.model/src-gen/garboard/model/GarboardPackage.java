/**
 */
package garboard.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardFactory
 * @generated
 */
public interface GarboardPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:garboard:record:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "garboard";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	GarboardPackage eINSTANCE = garboard.model.impl.GarboardPackageImpl.init();

	/**
	 * The meta object id for the '{@link garboard.model.impl.ItemImpl <em>Item</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ItemImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getItem()
	 * @generated
	 */
	int ITEM = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ITEM__ID = 0;

	/**
	 * The number of structural features of the '<em>Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ITEM_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link garboard.model.impl.PointImpl <em>Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.PointImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getPoint()
	 * @generated
	 */
	int POINT = 1;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POINT__X = 0;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POINT__Y = 1;

	/**
	 * The feature id for the '<em><b>Z</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POINT__Z = 2;

	/**
	 * The number of structural features of the '<em>Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POINT_FEATURE_COUNT = 3;

	/**
	 * The meta object id for the '{@link garboard.model.impl.CommissioningRecordImpl <em>Commissioning Record</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.CommissioningRecordImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getCommissioningRecord()
	 * @generated
	 */
	int COMMISSIONING_RECORD = 2;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__FORMAT_VERSION = 0;

	/**
	 * The feature id for the '<em><b>Record Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__RECORD_NUMBER = 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__TITLE = 2;

	/**
	 * The feature id for the '<em><b>Created On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__CREATED_ON = 3;

	/**
	 * The feature id for the '<em><b>Practices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__PRACTICES = 4;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__REMARKS = 5;

	/**
	 * The feature id for the '<em><b>Instruments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__INSTRUMENTS = 6;

	/**
	 * The feature id for the '<em><b>Parties</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__PARTIES = 7;

	/**
	 * The feature id for the '<em><b>Vessel</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__VESSEL = 8;

	/**
	 * The feature id for the '<em><b>Generator Set</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__GENERATOR_SET = 9;

	/**
	 * The feature id for the '<em><b>Starting Battery</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__STARTING_BATTERY = 10;

	/**
	 * The feature id for the '<em><b>Fuel Supply</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__FUEL_SUPPLY = 11;

	/**
	 * The feature id for the '<em><b>Raw Water</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__RAW_WATER = 12;

	/**
	 * The feature id for the '<em><b>Exhaust</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__EXHAUST = 13;

	/**
	 * The feature id for the '<em><b>Ventilation</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__VENTILATION = 14;

	/**
	 * The feature id for the '<em><b>Mounting</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__MOUNTING = 15;

	/**
	 * The feature id for the '<em><b>Ac Output</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__AC_OUTPUT = 16;

	/**
	 * The feature id for the '<em><b>Alarms</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__ALARMS = 17;

	/**
	 * The feature id for the '<em><b>Inspections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__INSPECTIONS = 18;

	/**
	 * The feature id for the '<em><b>Trial</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__TRIAL = 19;

	/**
	 * The feature id for the '<em><b>Upkeep</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__UPKEEP = 20;

	/**
	 * The feature id for the '<em><b>Acceptances</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__ACCEPTANCES = 21;

	/**
	 * The feature id for the '<em><b>Signatures</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__SIGNATURES = 22;

	/**
	 * The feature id for the '<em><b>Photographs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__PHOTOGRAPHS = 23;

	/**
	 * The feature id for the '<em><b>Revisions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__REVISIONS = 24;

	/**
	 * The feature id for the '<em><b>Unread Entries</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD__UNREAD_ENTRIES = 25;

	/**
	 * The number of structural features of the '<em>Commissioning Record</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSIONING_RECORD_FEATURE_COUNT = 26;

	/**
	 * The meta object id for the '{@link garboard.model.impl.RevisionImpl <em>Revision</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.RevisionImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getRevision()
	 * @generated
	 */
	int REVISION = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVISION__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVISION__NUMBER = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVISION__DATE = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVISION__BY = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Description</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVISION__DESCRIPTION = ITEM_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Revision</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVISION_FEATURE_COUNT = ITEM_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link garboard.model.impl.InstrumentImpl <em>Instrument</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.InstrumentImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getInstrument()
	 * @generated
	 */
	int INSTRUMENT = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__SERIAL_NUMBER = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Measures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__MEASURES = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Accuracy Stated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__ACCURACY_STATED = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Calibrated On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__CALIBRATED_ON = ITEM_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Instrument</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT_FEATURE_COUNT = ITEM_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link garboard.model.impl.PartyImpl <em>Party</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.PartyImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getParty()
	 * @generated
	 */
	int PARTY = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY__ROLE = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY__NAME = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Organisation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY__ORGANISATION = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY__LICENCE = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY__CONTACT = ITEM_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Party</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PARTY_FEATURE_COUNT = ITEM_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link garboard.model.impl.PhotographImpl <em>Photograph</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.PhotographImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getPhotograph()
	 * @generated
	 */
	int PHOTOGRAPH = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PHOTOGRAPH__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PHOTOGRAPH__CAPTION = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Taken On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PHOTOGRAPH__TAKEN_ON = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PHOTOGRAPH__MEDIA_TYPE = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Data</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PHOTOGRAPH__DATA = ITEM_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Photograph</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PHOTOGRAPH_FEATURE_COUNT = ITEM_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link garboard.model.impl.VesselImpl <em>Vessel</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.VesselImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getVessel()
	 * @generated
	 */
	int VESSEL = 7;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__NAME = 0;

	/**
	 * The feature id for the '<em><b>Identification</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__IDENTIFICATION = 1;

	/**
	 * The feature id for the '<em><b>Flag</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__FLAG = 2;

	/**
	 * The feature id for the '<em><b>Hull Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__HULL_KIND = 3;

	/**
	 * The feature id for the '<em><b>Hull Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__HULL_MATERIAL = 4;

	/**
	 * The feature id for the '<em><b>Service</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__SERVICE = 5;

	/**
	 * The feature id for the '<em><b>Built On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__BUILT_ON = 6;

	/**
	 * The feature id for the '<em><b>Length Overall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__LENGTH_OVERALL = 7;

	/**
	 * The feature id for the '<em><b>Waterline Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__WATERLINE_LENGTH = 8;

	/**
	 * The feature id for the '<em><b>Beam</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__BEAM = 9;

	/**
	 * The feature id for the '<em><b>Draught</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__DRAUGHT = 10;

	/**
	 * The feature id for the '<em><b>Freeboard Amidships</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__FREEBOARD_AMIDSHIPS = 11;

	/**
	 * The feature id for the '<em><b>Passengers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__PASSENGERS = 12;

	/**
	 * The feature id for the '<em><b>Overnight Passengers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__OVERNIGHT_PASSENGERS = 13;

	/**
	 * The feature id for the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__SPEED = 14;

	/**
	 * The feature id for the '<em><b>Design Heel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__DESIGN_HEEL = 15;

	/**
	 * The feature id for the '<em><b>Design Roll</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__DESIGN_ROLL = 16;

	/**
	 * The feature id for the '<em><b>Design Trim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__DESIGN_TRIM = 17;

	/**
	 * The feature id for the '<em><b>Sinkage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__SINKAGE = 18;

	/**
	 * The feature id for the '<em><b>Gasoline Engine Aboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__GASOLINE_ENGINE_ABOARD = 19;

	/**
	 * The feature id for the '<em><b>Gasoline Engines</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL__GASOLINE_ENGINES = 20;

	/**
	 * The number of structural features of the '<em>Vessel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_FEATURE_COUNT = 21;

	/**
	 * The meta object id for the '{@link garboard.model.impl.GeneratorSetImpl <em>Generator Set</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.GeneratorSetImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getGeneratorSet()
	 * @generated
	 */
	int GENERATOR_SET = 8;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__MAKER = 0;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__TYPE = 1;

	/**
	 * The feature id for the '<em><b>Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SERIAL_NUMBER = 2;

	/**
	 * The feature id for the '<em><b>Engine Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__ENGINE_SERIAL_NUMBER = 3;

	/**
	 * The feature id for the '<em><b>Alternator Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER = 4;

	/**
	 * The feature id for the '<em><b>Sold On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SOLD_ON = 5;

	/**
	 * The feature id for the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__INSTALLED_ON = 6;

	/**
	 * The feature id for the '<em><b>Hour Meter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__HOUR_METER = 7;

	/**
	 * The feature id for the '<em><b>Fuel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__FUEL = 8;

	/**
	 * The feature id for the '<em><b>Fuel System</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__FUEL_SYSTEM = 9;

	/**
	 * The feature id for the '<em><b>Aspiration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__ASPIRATION = 10;

	/**
	 * The feature id for the '<em><b>Cooling</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__COOLING = 11;

	/**
	 * The feature id for the '<em><b>Duty Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__DUTY_RATING = 12;

	/**
	 * The feature id for the '<em><b>Rated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RATED_POWER = 13;

	/**
	 * The feature id for the '<em><b>Rated Apparent Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RATED_APPARENT_POWER = 14;

	/**
	 * The feature id for the '<em><b>Rated Power Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RATED_POWER_FACTOR = 15;

	/**
	 * The feature id for the '<em><b>Rated Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RATED_VOLTAGE = 16;

	/**
	 * The feature id for the '<em><b>Rated Frequency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RATED_FREQUENCY = 17;

	/**
	 * The feature id for the '<em><b>Phases</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__PHASES = 18;

	/**
	 * The feature id for the '<em><b>Rated Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RATED_SPEED = 19;

	/**
	 * The feature id for the '<em><b>Poles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__POLES = 20;

	/**
	 * The feature id for the '<em><b>Cranking Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__CRANKING_SPEED = 21;

	/**
	 * The feature id for the '<em><b>Shaft Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SHAFT_POWER = 22;

	/**
	 * The feature id for the '<em><b>Alternator Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__ALTERNATOR_EFFICIENCY = 23;

	/**
	 * The feature id for the '<em><b>Fuel Consumption Full Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD = 24;

	/**
	 * The feature id for the '<em><b>Specific Fuel Consumption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION = 25;

	/**
	 * The feature id for the '<em><b>Air Fuel Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__AIR_FUEL_RATIO = 26;

	/**
	 * The feature id for the '<em><b>Exhaust Gas Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__EXHAUST_GAS_TEMPERATURE = 27;

	/**
	 * The feature id for the '<em><b>Exhaust Mass Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__EXHAUST_MASS_FLOW = 28;

	/**
	 * The feature id for the '<em><b>Heat To Coolant</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__HEAT_TO_COOLANT = 29;

	/**
	 * The feature id for the '<em><b>Heat To Compartment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__HEAT_TO_COMPARTMENT = 30;

	/**
	 * The feature id for the '<em><b>Combustion Air Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__COMBUSTION_AIR_FLOW = 31;

	/**
	 * The feature id for the '<em><b>Raw Water Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__RAW_WATER_FLOW = 32;

	/**
	 * The feature id for the '<em><b>System Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SYSTEM_VOLTAGE = 33;

	/**
	 * The feature id for the '<em><b>Cranking Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__CRANKING_CURRENT = 34;

	/**
	 * The feature id for the '<em><b>Starter Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__STARTER_VOLTAGE = 35;

	/**
	 * The feature id for the '<em><b>In Sound Shield</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__IN_SOUND_SHIELD = 36;

	/**
	 * The feature id for the '<em><b>Overload Declared</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__OVERLOAD_DECLARED = 37;

	/**
	 * The feature id for the '<em><b>Emission Label Marine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__EMISSION_LABEL_MARINE = 38;

	/**
	 * The feature id for the '<em><b>Performance Class</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__PERFORMANCE_CLASS = 39;

	/**
	 * The feature id for the '<em><b>Design Ambient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__DESIGN_AMBIENT = 40;

	/**
	 * The feature id for the '<em><b>Subtransient Reactance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SUBTRANSIENT_REACTANCE = 41;

	/**
	 * The feature id for the '<em><b>Transient Reactance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__TRANSIENT_REACTANCE = 42;

	/**
	 * The feature id for the '<em><b>Sustained Short Circuit Multiple</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE = 43;

	/**
	 * The feature id for the '<em><b>Annual Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__ANNUAL_HOURS = 44;

	/**
	 * The feature id for the '<em><b>Plate Shows Derated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__PLATE_SHOWS_DERATED_POWER = 45;

	/**
	 * The feature id for the '<em><b>Maker Limits</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET__MAKER_LIMITS = 46;

	/**
	 * The number of structural features of the '<em>Generator Set</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GENERATOR_SET_FEATURE_COUNT = 47;

	/**
	 * The meta object id for the '{@link garboard.model.impl.MakerLimitsImpl <em>Maker Limits</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.MakerLimitsImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getMakerLimits()
	 * @generated
	 */
	int MAKER_LIMITS = 9;

	/**
	 * The feature id for the '<em><b>Document</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__DOCUMENT = 0;

	/**
	 * The feature id for the '<em><b>Document Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__DOCUMENT_PAGE = 1;

	/**
	 * The feature id for the '<em><b>Maximum Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_BACK_PRESSURE = 2;

	/**
	 * The feature id for the '<em><b>Maximum Lift Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT = 3;

	/**
	 * The feature id for the '<em><b>Minimum Siphon Break Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT = 4;

	/**
	 * The feature id for the '<em><b>Minimum Siphon Clearance Heeled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED = 5;

	/**
	 * The feature id for the '<em><b>Siphon Break Needed Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW = 6;

	/**
	 * The feature id for the '<em><b>Minimum Injection Drop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_INJECTION_DROP = 7;

	/**
	 * The feature id for the '<em><b>Minimum Exhaust Fall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_EXHAUST_FALL = 8;

	/**
	 * The feature id for the '<em><b>Minimum Exhaust Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_EXHAUST_BORE = 9;

	/**
	 * The feature id for the '<em><b>Maximum Exhaust Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH = 10;

	/**
	 * The feature id for the '<em><b>Minimum Muffler Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME = 11;

	/**
	 * The feature id for the '<em><b>Minimum Raw Water Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW = 12;

	/**
	 * The feature id for the '<em><b>Maximum Raw Water Suction Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD = 13;

	/**
	 * The feature id for the '<em><b>Maximum Raw Water Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM = 14;

	/**
	 * The feature id for the '<em><b>Maximum Raw Water Inlet Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE = 15;

	/**
	 * The feature id for the '<em><b>Minimum Raw Water Hose Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE = 16;

	/**
	 * The feature id for the '<em><b>Maximum Fuel Lift</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_FUEL_LIFT = 17;

	/**
	 * The feature id for the '<em><b>Maximum Fuel Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_FUEL_VACUUM = 18;

	/**
	 * The feature id for the '<em><b>Minimum Fuel Line Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE = 19;

	/**
	 * The feature id for the '<em><b>Required Separator Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW = 20;

	/**
	 * The feature id for the '<em><b>Filter Fineness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__FILTER_FINENESS = 21;

	/**
	 * The feature id for the '<em><b>Minimum Battery Cc A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_BATTERY_CC_A = 22;

	/**
	 * The feature id for the '<em><b>Minimum Battery Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY = 23;

	/**
	 * The feature id for the '<em><b>Battery Cranking Definition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__BATTERY_CRANKING_DEFINITION = 24;

	/**
	 * The feature id for the '<em><b>Maximum Cranking Circuit Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE = 25;

	/**
	 * The feature id for the '<em><b>Minimum Cranking Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE = 26;

	/**
	 * The feature id for the '<em><b>Feed Pressure Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__FEED_PRESSURE_LOW = 27;

	/**
	 * The feature id for the '<em><b>Feed Pressure High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__FEED_PRESSURE_HIGH = 28;

	/**
	 * The feature id for the '<em><b>Rail Pressure Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__RAIL_PRESSURE_LOW = 29;

	/**
	 * The feature id for the '<em><b>Rail Pressure High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__RAIL_PRESSURE_HIGH = 30;

	/**
	 * The feature id for the '<em><b>Maximum Crank Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_CRANK_TIME = 31;

	/**
	 * The feature id for the '<em><b>Maximum Total Crank Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME = 32;

	/**
	 * The feature id for the '<em><b>Maximum Compartment Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE = 33;

	/**
	 * The feature id for the '<em><b>Maximum Compartment Rise</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE = 34;

	/**
	 * The feature id for the '<em><b>Maximum Depression</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_DEPRESSION = 35;

	/**
	 * The feature id for the '<em><b>Maximum Heel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_HEEL = 36;

	/**
	 * The feature id for the '<em><b>Maximum Trim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_TRIM = 37;

	/**
	 * The feature id for the '<em><b>Maximum Coolant Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE = 38;

	/**
	 * The feature id for the '<em><b>Minimum Oil Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_OIL_PRESSURE = 39;

	/**
	 * The feature id for the '<em><b>Maximum Exhaust Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE = 40;

	/**
	 * The feature id for the '<em><b>Minimum Ventilation Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS__MINIMUM_VENTILATION_AREA = 41;

	/**
	 * The number of structural features of the '<em>Maker Limits</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKER_LIMITS_FEATURE_COUNT = 42;

	/**
	 * The meta object id for the '{@link garboard.model.impl.StartingBatteryImpl <em>Starting Battery</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.StartingBatteryImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getStartingBattery()
	 * @generated
	 */
	int STARTING_BATTERY = 10;

	/**
	 * The feature id for the '<em><b>Chemistry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CHEMISTRY = 0;

	/**
	 * The feature id for the '<em><b>Block Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCK_VOLTAGE = 1;

	/**
	 * The feature id for the '<em><b>Blocks In Series</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCKS_IN_SERIES = 2;

	/**
	 * The feature id for the '<em><b>Strings In Parallel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__STRINGS_IN_PARALLEL = 3;

	/**
	 * The feature id for the '<em><b>Block Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCK_CAPACITY = 4;

	/**
	 * The feature id for the '<em><b>Block Cranking Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCK_CRANKING_RATING = 5;

	/**
	 * The feature id for the '<em><b>Cranking Rating Definition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CRANKING_RATING_DEFINITION = 6;

	/**
	 * The feature id for the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__INSTALLED_ON = 7;

	/**
	 * The feature id for the '<em><b>Block Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCK_MASS = 8;

	/**
	 * The feature id for the '<em><b>Battery Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BATTERY_TEMPERATURE = 9;

	/**
	 * The feature id for the '<em><b>Rest Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__REST_TIME = 10;

	/**
	 * The feature id for the '<em><b>Rested Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__RESTED_VOLTAGE = 11;

	/**
	 * The feature id for the '<em><b>Coldest Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__COLDEST_START = 12;

	/**
	 * The feature id for the '<em><b>Blocks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCKS = 13;

	/**
	 * The feature id for the '<em><b>Dedicated To Generator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__DEDICATED_TO_GENERATOR = 14;

	/**
	 * The feature id for the '<em><b>Isolating Switch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__ISOLATING_SWITCH = 15;

	/**
	 * The feature id for the '<em><b>Isolating Switch Reachable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE = 16;

	/**
	 * The feature id for the '<em><b>Emergency Cross Connect</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__EMERGENCY_CROSS_CONNECT = 17;

	/**
	 * The feature id for the '<em><b>Secured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__SECURED = 18;

	/**
	 * The feature id for the '<em><b>Movement Under Test</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__MOVEMENT_UNDER_TEST = 19;

	/**
	 * The feature id for the '<em><b>Tray Or Box</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__TRAY_OR_BOX = 20;

	/**
	 * The feature id for the '<em><b>Positive Terminal Covered</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__POSITIVE_TERMINAL_COVERED = 21;

	/**
	 * The feature id for the '<em><b>Terminals</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__TERMINALS = 22;

	/**
	 * The feature id for the '<em><b>Vented Overboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__VENTED_OVERBOARD = 23;

	/**
	 * The feature id for the '<em><b>Ventilation Area Each Way</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__VENTILATION_AREA_EACH_WAY = 24;

	/**
	 * The feature id for the '<em><b>Distance To Starter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__DISTANCE_TO_STARTER = 25;

	/**
	 * The feature id for the '<em><b>Fuel Parts Within Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH = 26;

	/**
	 * The feature id for the '<em><b>Dielectric Shield</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__DIELECTRIC_SHIELD = 27;

	/**
	 * The feature id for the '<em><b>Above Or Below Fuel Fittings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS = 28;

	/**
	 * The feature id for the '<em><b>High Above Bilge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__HIGH_ABOVE_BILGE = 29;

	/**
	 * The feature id for the '<em><b>Charger Rated Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CHARGER_RATED_CURRENT = 30;

	/**
	 * The feature id for the '<em><b>Charger Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CHARGER_VOLTAGE = 31;

	/**
	 * The feature id for the '<em><b>Charging Voltage Running</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING = 32;

	/**
	 * The feature id for the '<em><b>Charger Ammeter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CHARGER_AMMETER = 33;

	/**
	 * The feature id for the '<em><b>Same Type And Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__SAME_TYPE_AND_AGE = 34;

	/**
	 * The feature id for the '<em><b>Cables</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CABLES = 35;

	/**
	 * The feature id for the '<em><b>Cranking Voltage At Posts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS = 36;

	/**
	 * The feature id for the '<em><b>Cranking Voltage At Starter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER = 37;

	/**
	 * The feature id for the '<em><b>Blocks Mixed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__BLOCKS_MIXED = 38;

	/**
	 * The feature id for the '<em><b>Emergency Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY__EMERGENCY_SOURCE = 39;

	/**
	 * The number of structural features of the '<em>Starting Battery</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STARTING_BATTERY_FEATURE_COUNT = 40;

	/**
	 * The meta object id for the '{@link garboard.model.impl.BatteryBlockImpl <em>Battery Block</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.BatteryBlockImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getBatteryBlock()
	 * @generated
	 */
	int BATTERY_BLOCK = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATTERY_BLOCK__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATTERY_BLOCK__LABEL = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rested Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATTERY_BLOCK__RESTED_VOLTAGE = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Specific Gravity Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Specific Gravity High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH = ITEM_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Battery Block</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATTERY_BLOCK_FEATURE_COUNT = ITEM_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link garboard.model.impl.CableRunImpl <em>Cable Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.CableRunImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getCableRun()
	 * @generated
	 */
	int CABLE_RUN = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Function</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__FUNCTION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Conductor Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CONDUCTOR_SIZE = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Strand Class</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__STRAND_CLASS = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Insulation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__INSULATION = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__LENGTH = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CURRENT = ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>System Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__SYSTEM_VOLTAGE = ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Critical</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CRITICAL = ITEM_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>In Engine Space</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__IN_ENGINE_SPACE = ITEM_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Conductors In Bundle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CONDUCTORS_IN_BUNDLE = ITEM_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Conductor Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CONDUCTOR_TEMPERATURE = ITEM_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Protection</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__PROTECTION = ITEM_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Protection Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__PROTECTION_RATING = ITEM_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Protection Voltage Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__PROTECTION_VOLTAGE_RATING = ITEM_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Protection Distance From Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE = ITEM_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Sheathed To Protection</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__SHEATHED_TO_PROTECTION = ITEM_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Connected To Battery Terminal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL = ITEM_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Support Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__SUPPORT_SPACING = ITEM_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Ring Terminals</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__RING_TERMINALS = ITEM_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Lugs On Stud</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__LUGS_ON_STUD = ITEM_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Chafe Protected</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__CHAFE_PROTECTED = ITEM_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Multi Strand Copper</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__MULTI_STRAND_COPPER = ITEM_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Measured Drop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN__MEASURED_DROP = ITEM_FEATURE_COUNT + 23;

	/**
	 * The number of structural features of the '<em>Cable Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CABLE_RUN_FEATURE_COUNT = ITEM_FEATURE_COUNT + 24;

	/**
	 * The meta object id for the '{@link garboard.model.impl.FuelSupplyImpl <em>Fuel Supply</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.FuelSupplyImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelSupply()
	 * @generated
	 */
	int FUEL_SUPPLY = 13;

	/**
	 * The feature id for the '<em><b>Tank</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__TANK = 0;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__LINES = 1;

	/**
	 * The feature id for the '<em><b>Separator</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__SEPARATOR = 2;

	/**
	 * The feature id for the '<em><b>Pump Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PUMP_POSITION = 3;

	/**
	 * The feature id for the '<em><b>Engine Inlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__ENGINE_INLET_HEIGHT = 4;

	/**
	 * The feature id for the '<em><b>Highest Line Point</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__HIGHEST_LINE_POINT = 5;

	/**
	 * The feature id for the '<em><b>Lowest Line Point</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__LOWEST_LINE_POINT = 6;

	/**
	 * The feature id for the '<em><b>Pump Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PUMP_FLOW = 7;

	/**
	 * The feature id for the '<em><b>Electric Pump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__ELECTRIC_PUMP = 8;

	/**
	 * The feature id for the '<em><b>Pump Stops With Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE = 9;

	/**
	 * The feature id for the '<em><b>Pump Within Reach Of Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE = 10;

	/**
	 * The feature id for the '<em><b>Anti Siphon</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__ANTI_SIPHON = 11;

	/**
	 * The feature id for the '<em><b>Anti Siphon Cracking Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE = 12;

	/**
	 * The feature id for the '<em><b>Tank Shut Off</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__TANK_SHUT_OFF = 13;

	/**
	 * The feature id for the '<em><b>Tank Shut Off Reachable From Outside</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE = 14;

	/**
	 * The feature id for the '<em><b>Engine Shut Off</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__ENGINE_SHUT_OFF = 15;

	/**
	 * The feature id for the '<em><b>Line Length Tank To Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE = 16;

	/**
	 * The feature id for the '<em><b>Own Pick Up</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__OWN_PICK_UP = 17;

	/**
	 * The feature id for the '<em><b>Pick Up Clearance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PICK_UP_CLEARANCE = 18;

	/**
	 * The feature id for the '<em><b>Pick Up Screen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PICK_UP_SCREEN = 19;

	/**
	 * The feature id for the '<em><b>Return To Tank In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__RETURN_TO_TANK_IN_USE = 20;

	/**
	 * The feature id for the '<em><b>Return Can Dead Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD = 21;

	/**
	 * The feature id for the '<em><b>Flexible Last Link</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__FLEXIBLE_LAST_LINK = 22;

	/**
	 * The feature id for the '<em><b>Rigid Line Support Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE = 23;

	/**
	 * The feature id for the '<em><b>Flexible Hose Spill Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME = 24;

	/**
	 * The feature id for the '<em><b>Leak Test Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__LEAK_TEST_PRESSURE = 25;

	/**
	 * The feature id for the '<em><b>Leak Test Held</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__LEAK_TEST_HELD = 26;

	/**
	 * The feature id for the '<em><b>Ground Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__GROUND_RESISTANCE = 27;

	/**
	 * The feature id for the '<em><b>Fill Hose Clamps</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__FILL_HOSE_CLAMPS = 28;

	/**
	 * The feature id for the '<em><b>Fill Clamp Band Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH = 29;

	/**
	 * The feature id for the '<em><b>Vent Flame Arrester</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__VENT_FLAME_ARRESTER = 30;

	/**
	 * The feature id for the '<em><b>Clean Vacuum At Pump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP = 31;

	/**
	 * The feature id for the '<em><b>Vacuum At Pump Now</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__VACUUM_AT_PUMP_NOW = 32;

	/**
	 * The feature id for the '<em><b>Feed Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__FEED_PRESSURE = 33;

	/**
	 * The feature id for the '<em><b>Rail Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__RAIL_PRESSURE = 34;

	/**
	 * The feature id for the '<em><b>Planned Run Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PLANNED_RUN_TIME = 35;

	/**
	 * The feature id for the '<em><b>Planned Load Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__PLANNED_LOAD_POWER = 36;

	/**
	 * The feature id for the '<em><b>Backfire Flame Arrester</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER = 37;

	/**
	 * The number of structural features of the '<em>Fuel Supply</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SUPPLY_FEATURE_COUNT = 38;

	/**
	 * The meta object id for the '{@link garboard.model.impl.FuelTankImpl <em>Fuel Tank</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.FuelTankImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelTank()
	 * @generated
	 */
	int FUEL_TANK = 14;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__NAME = 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__MATERIAL = 1;

	/**
	 * The feature id for the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__CAPACITY = 2;

	/**
	 * The feature id for the '<em><b>Usable Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__USABLE_FRACTION = 3;

	/**
	 * The feature id for the '<em><b>Top</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__TOP = 4;

	/**
	 * The feature id for the '<em><b>Bottom Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__BOTTOM_HEIGHT = 5;

	/**
	 * The feature id for the '<em><b>Labelled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__LABELLED = 6;

	/**
	 * The feature id for the '<em><b>Test Pressure On Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__TEST_PRESSURE_ON_LABEL = 7;

	/**
	 * The feature id for the '<em><b>Test Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__TEST_PRESSURE = 8;

	/**
	 * The feature id for the '<em><b>Openings At Top</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__OPENINGS_AT_TOP = 9;

	/**
	 * The feature id for the '<em><b>Movement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__MOVEMENT = 10;

	/**
	 * The feature id for the '<em><b>Shared With Main Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK__SHARED_WITH_MAIN_ENGINE = 11;

	/**
	 * The number of structural features of the '<em>Fuel Tank</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_TANK_FEATURE_COUNT = 12;

	/**
	 * The meta object id for the '{@link garboard.model.impl.FuelLineRunImpl <em>Fuel Line Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.FuelLineRunImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelLineRun()
	 * @generated
	 */
	int FUEL_LINE_RUN = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Function</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__FUNCTION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__KIND = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__BORE = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__LENGTH = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Marking</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__MARKING = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Working Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__WORKING_PRESSURE = ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Clamps Per End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__CLAMPS_PER_END = ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Barbed Ends</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__BARBED_ENDS = ITEM_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>In Engine Space</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__IN_ENGINE_SPACE = ITEM_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN__INSTALLED_ON = ITEM_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Fuel Line Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_LINE_RUN_FEATURE_COUNT = ITEM_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link garboard.model.impl.FuelSeparatorImpl <em>Fuel Separator</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.FuelSeparatorImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelSeparator()
	 * @generated
	 */
	int FUEL_SEPARATOR = 16;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__MAKER = 0;

	/**
	 * The feature id for the '<em><b>Rated Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__RATED_FLOW = 1;

	/**
	 * The feature id for the '<em><b>Fineness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__FINENESS = 2;

	/**
	 * The feature id for the '<em><b>On Engine Fineness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__ON_ENGINE_FINENESS = 3;

	/**
	 * The feature id for the '<em><b>Bowl</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__BOWL = 4;

	/**
	 * The feature id for the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__POSITION = 5;

	/**
	 * The feature id for the '<em><b>Clearance Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__CLEARANCE_BELOW = 6;

	/**
	 * The feature id for the '<em><b>Fixed To Structure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__FIXED_TO_STRUCTURE = 7;

	/**
	 * The feature id for the '<em><b>Highest Point Of Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE = 8;

	/**
	 * The feature id for the '<em><b>Fire Tested</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__FIRE_TESTED = 9;

	/**
	 * The feature id for the '<em><b>Water Alarm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__WATER_ALARM = 10;

	/**
	 * The feature id for the '<em><b>Element Changed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__ELEMENT_CHANGED_ON = 11;

	/**
	 * The feature id for the '<em><b>Bypass Or Spare</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__BYPASS_OR_SPARE = 12;

	/**
	 * The feature id for the '<em><b>Water Found</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR__WATER_FOUND = 13;

	/**
	 * The number of structural features of the '<em>Fuel Separator</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_SEPARATOR_FEATURE_COUNT = 14;

	/**
	 * The meta object id for the '{@link garboard.model.impl.RawWaterCircuitImpl <em>Raw Water Circuit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.RawWaterCircuitImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getRawWaterCircuit()
	 * @generated
	 */
	int RAW_WATER_CIRCUIT = 17;

	/**
	 * The feature id for the '<em><b>Pick Up</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__PICK_UP = 0;

	/**
	 * The feature id for the '<em><b>Seacock</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__SEACOCK = 1;

	/**
	 * The feature id for the '<em><b>Strainer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__STRAINER = 2;

	/**
	 * The feature id for the '<em><b>Hoses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__HOSES = 3;

	/**
	 * The feature id for the '<em><b>Pump</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__PUMP = 4;

	/**
	 * The feature id for the '<em><b>Siphon Break</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__SIPHON_BREAK = 5;

	/**
	 * The feature id for the '<em><b>Injection</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__INJECTION = 6;

	/**
	 * The feature id for the '<em><b>Siphon Break Hose Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE = 7;

	/**
	 * The feature id for the '<em><b>Own Intake</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__OWN_INTAKE = 8;

	/**
	 * The feature id for the '<em><b>Discharge Ahead Of Intake</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE = 9;

	/**
	 * The feature id for the '<em><b>Measured Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__MEASURED_FLOW = 10;

	/**
	 * The feature id for the '<em><b>Measured Vacuum At Pump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP = 11;

	/**
	 * The feature id for the '<em><b>Measured Inlet Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE = 12;

	/**
	 * The feature id for the '<em><b>Measured Overboard Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE = 13;

	/**
	 * The feature id for the '<em><b>Design Sea Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE = 14;

	/**
	 * The feature id for the '<em><b>Seacock Tag At Start Panel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL = 15;

	/**
	 * The feature id for the '<em><b>Shut When Not In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE = 16;

	/**
	 * The feature id for the '<em><b>Winterise Connection</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT__WINTERISE_CONNECTION = 17;

	/**
	 * The number of structural features of the '<em>Raw Water Circuit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_CIRCUIT_FEATURE_COUNT = 18;

	/**
	 * The meta object id for the '{@link garboard.model.impl.HullPickUpImpl <em>Hull Pick Up</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.HullPickUpImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getHullPickUp()
	 * @generated
	 */
	int HULL_PICK_UP = 18;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP__KIND = 0;

	/**
	 * The feature id for the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP__POSITION = 1;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP__BORE = 2;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP__MATERIAL = 3;

	/**
	 * The feature id for the '<em><b>Grating Open Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP__GRATING_OPEN_AREA = 4;

	/**
	 * The feature id for the '<em><b>Light Ship Rise</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP__LIGHT_SHIP_RISE = 5;

	/**
	 * The number of structural features of the '<em>Hull Pick Up</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HULL_PICK_UP_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link garboard.model.impl.SeacockImpl <em>Seacock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.SeacockImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getSeacock()
	 * @generated
	 */
	int SEACOCK = 19;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__KIND = 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__MATERIAL = 1;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__BORE = 2;

	/**
	 * The feature id for the '<em><b>Full Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__FULL_BORE = 3;

	/**
	 * The feature id for the '<em><b>Lever Shows State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__LEVER_SHOWS_STATE = 4;

	/**
	 * The feature id for the '<em><b>Reachable Without Tools</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__REACHABLE_WITHOUT_TOOLS = 5;

	/**
	 * The feature id for the '<em><b>Close To Hull</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__CLOSE_TO_HULL = 6;

	/**
	 * The feature id for the '<em><b>Static Load Marked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__STATIC_LOAD_MARKED = 7;

	/**
	 * The feature id for the '<em><b>Works Freely</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK__WORKS_FREELY = 8;

	/**
	 * The number of structural features of the '<em>Seacock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEACOCK_FEATURE_COUNT = 9;

	/**
	 * The meta object id for the '{@link garboard.model.impl.WaterStrainerImpl <em>Water Strainer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.WaterStrainerImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getWaterStrainer()
	 * @generated
	 */
	int WATER_STRAINER = 20;

	/**
	 * The feature id for the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__POSITION = 0;

	/**
	 * The feature id for the '<em><b>Port Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__PORT_BORE = 1;

	/**
	 * The feature id for the '<em><b>Basket Open Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__BASKET_OPEN_AREA = 2;

	/**
	 * The feature id for the '<em><b>Hole Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__HOLE_SIZE = 3;

	/**
	 * The feature id for the '<em><b>See Through Or Openable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__SEE_THROUGH_OR_OPENABLE = 4;

	/**
	 * The feature id for the '<em><b>Beside Seacock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__BESIDE_SEACOCK = 5;

	/**
	 * The feature id for the '<em><b>Lid Above Waterline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER__LID_ABOVE_WATERLINE = 6;

	/**
	 * The number of structural features of the '<em>Water Strainer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_STRAINER_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link garboard.model.impl.WaterHoseRunImpl <em>Water Hose Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.WaterHoseRunImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getWaterHoseRun()
	 * @generated
	 */
	int WATER_HOSE_RUN = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__SECTION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__KIND = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__BORE = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__LENGTH = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Clamps Per End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__CLAMPS_PER_END = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Collapse Proof</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__COLLAPSE_PROOF = ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Fittings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__FITTINGS = ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN__INSTALLED_ON = ITEM_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Water Hose Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_HOSE_RUN_FEATURE_COUNT = ITEM_FEATURE_COUNT + 9;

	/**
	 * The meta object id for the '{@link garboard.model.impl.PipeFittingImpl <em>Pipe Fitting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.PipeFittingImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getPipeFitting()
	 * @generated
	 */
	int PIPE_FITTING = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_FITTING__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_FITTING__KIND = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_FITTING__COUNT = ITEM_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Pipe Fitting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_FITTING_FEATURE_COUNT = ITEM_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link garboard.model.impl.WaterPumpImpl <em>Water Pump</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.WaterPumpImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getWaterPump()
	 * @generated
	 */
	int WATER_PUMP = 23;

	/**
	 * The feature id for the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__POSITION = 0;

	/**
	 * The feature id for the '<em><b>Inlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__INLET_BORE = 1;

	/**
	 * The feature id for the '<em><b>Outlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__OUTLET_BORE = 2;

	/**
	 * The feature id for the '<em><b>Rated Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__RATED_FLOW = 3;

	/**
	 * The feature id for the '<em><b>Self Priming</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__SELF_PRIMING = 4;

	/**
	 * The feature id for the '<em><b>Impeller Pieces Missing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__IMPELLER_PIECES_MISSING = 5;

	/**
	 * The feature id for the '<em><b>Impeller Pieces Found</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__IMPELLER_PIECES_FOUND = 6;

	/**
	 * The feature id for the '<em><b>Impeller Changed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP__IMPELLER_CHANGED_ON = 7;

	/**
	 * The number of structural features of the '<em>Water Pump</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_PUMP_FEATURE_COUNT = 8;

	/**
	 * The meta object id for the '{@link garboard.model.impl.SiphonBreakImpl <em>Siphon Break</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.SiphonBreakImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getSiphonBreak()
	 * @generated
	 */
	int SIPHON_BREAK = 24;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__KIND = 0;

	/**
	 * The feature id for the '<em><b>Vent Seat</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__VENT_SEAT = 1;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__PLACE = 2;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__BORE = 3;

	/**
	 * The feature id for the '<em><b>Highest Point</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__HIGHEST_POINT = 4;

	/**
	 * The feature id for the '<em><b>Vent Hose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__VENT_HOSE = 5;

	/**
	 * The feature id for the '<em><b>Vent Hose Free</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__VENT_HOSE_FREE = 6;

	/**
	 * The feature id for the '<em><b>Vent Hose End Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__VENT_HOSE_END_HEIGHT = 7;

	/**
	 * The feature id for the '<em><b>Bleed Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__BLEED_BORE = 8;

	/**
	 * The feature id for the '<em><b>Tell Tale Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__TELL_TALE_VISIBLE = 9;

	/**
	 * The feature id for the '<em><b>Above Electrics</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__ABOVE_ELECTRICS = 10;

	/**
	 * The feature id for the '<em><b>Drip Shield</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__DRIP_SHIELD = 11;

	/**
	 * The feature id for the '<em><b>Serviced On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__SERVICED_ON = 12;

	/**
	 * The feature id for the '<em><b>Valve Tested</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK__VALVE_TESTED = 13;

	/**
	 * The number of structural features of the '<em>Siphon Break</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIPHON_BREAK_FEATURE_COUNT = 14;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ExhaustRunImpl <em>Exhaust Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ExhaustRunImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustRun()
	 * @generated
	 */
	int EXHAUST_RUN = 25;

	/**
	 * The feature id for the '<em><b>Path</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__PATH = 0;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__SECTIONS = 1;

	/**
	 * The feature id for the '<em><b>Muffler</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__MUFFLER = 2;

	/**
	 * The feature id for the '<em><b>Riser</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__RISER = 3;

	/**
	 * The feature id for the '<em><b>Crest</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__CREST = 4;

	/**
	 * The feature id for the '<em><b>Outlet</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__OUTLET = 5;

	/**
	 * The feature id for the '<em><b>Separator Drain</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__SEPARATOR_DRAIN = 6;

	/**
	 * The feature id for the '<em><b>Turbine Outlet Port Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE = 7;

	/**
	 * The feature id for the '<em><b>Own System</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__OWN_SYSTEM = 8;

	/**
	 * The feature id for the '<em><b>Gas Tight</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__GAS_TIGHT = 9;

	/**
	 * The feature id for the '<em><b>Dry Parts Lagged</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__DRY_PARTS_LAGGED = 10;

	/**
	 * The feature id for the '<em><b>Dry Part Surface Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE = 11;

	/**
	 * The feature id for the '<em><b>Weight On Manifold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__WEIGHT_ON_MANIFOLD = 12;

	/**
	 * The feature id for the '<em><b>Temperature Alarm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__TEMPERATURE_ALARM = 13;

	/**
	 * The feature id for the '<em><b>Temperature Alarm Setting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__TEMPERATURE_ALARM_SETTING = 14;

	/**
	 * The feature id for the '<em><b>Test Tap Fitted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__TEST_TAP_FITTED = 15;

	/**
	 * The feature id for the '<em><b>Test Tap Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__TEST_TAP_DISTANCE = 16;

	/**
	 * The feature id for the '<em><b>Measured Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__MEASURED_BACK_PRESSURE = 17;

	/**
	 * The feature id for the '<em><b>Measured Back Pressure Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD = 18;

	/**
	 * The feature id for the '<em><b>Baseline Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__BASELINE_BACK_PRESSURE = 19;

	/**
	 * The feature id for the '<em><b>Silencer Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__SILENCER_LOSS = 20;

	/**
	 * The feature id for the '<em><b>Water Full Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__WATER_FULL_LENGTH = 21;

	/**
	 * The feature id for the '<em><b>Bulkheads Sealed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__BULKHEADS_SEALED = 22;

	/**
	 * The feature id for the '<em><b>Joints Accessible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__JOINTS_ACCESSIBLE = 23;

	/**
	 * The feature id for the '<em><b>Clear Of Combustibles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES = 24;

	/**
	 * The number of structural features of the '<em>Exhaust Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_RUN_FEATURE_COUNT = 25;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ExhaustPointImpl <em>Exhaust Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ExhaustPointImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustPoint()
	 * @generated
	 */
	int EXHAUST_POINT = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_POINT__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_POINT__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_POINT__POSITION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_POINT__BORE = ITEM_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Exhaust Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_POINT_FEATURE_COUNT = ITEM_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ExhaustSectionRunImpl <em>Exhaust Section Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ExhaustSectionRunImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustSectionRun()
	 * @generated
	 */
	int EXHAUST_SECTION_RUN = 27;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__SECTION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Standard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__STANDARD = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__BORE = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__LENGTH = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Rise</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__RISE = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Fall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__FALL = ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Slopes Back To Muffler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER = ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Bends</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__BENDS = ITEM_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Clamps Per End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__CLAMPS_PER_END = ITEM_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Clamp Band Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH = ITEM_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Support Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__SUPPORT_SPACING = ITEM_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Sag Free</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__SAG_FREE = ITEM_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__INSTALLED_ON = ITEM_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Gas Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN__GAS_TEMPERATURE = ITEM_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Exhaust Section Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_SECTION_RUN_FEATURE_COUNT = ITEM_FEATURE_COUNT + 15;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ExhaustBendImpl <em>Exhaust Bend</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ExhaustBendImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustBend()
	 * @generated
	 */
	int EXHAUST_BEND = 28;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_BEND__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_BEND__KIND = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_BEND__COUNT = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_BEND__RADIUS = ITEM_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Exhaust Bend</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_BEND_FEATURE_COUNT = ITEM_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link garboard.model.impl.MufflerImpl <em>Muffler</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.MufflerImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getMuffler()
	 * @generated
	 */
	int MUFFLER = 29;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__KIND = 0;

	/**
	 * The feature id for the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__POSITION = 1;

	/**
	 * The feature id for the '<em><b>Inlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__INLET_BORE = 2;

	/**
	 * The feature id for the '<em><b>Outlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__OUTLET_BORE = 3;

	/**
	 * The feature id for the '<em><b>Volume To Inlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__VOLUME_TO_INLET = 4;

	/**
	 * The feature id for the '<em><b>Residue Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__RESIDUE_FRACTION = 5;

	/**
	 * The feature id for the '<em><b>Bottom Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__BOTTOM_HEIGHT = 6;

	/**
	 * The feature id for the '<em><b>Inlet Invert Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__INLET_INVERT_HEIGHT = 7;

	/**
	 * The feature id for the '<em><b>Distance From Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__DISTANCE_FROM_ENGINE = 8;

	/**
	 * The feature id for the '<em><b>Lowest Point</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__LOWEST_POINT = 9;

	/**
	 * The feature id for the '<em><b>Marked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__MARKED = 10;

	/**
	 * The feature id for the '<em><b>Drain Plug</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__DRAIN_PLUG = 11;

	/**
	 * The feature id for the '<em><b>Drain Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__DRAIN_POSITION = 12;

	/**
	 * The feature id for the '<em><b>Level After Stop Below Inlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET = 13;

	/**
	 * The feature id for the '<em><b>Supported</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__SUPPORTED = 14;

	/**
	 * The feature id for the '<em><b>Pressure Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER__PRESSURE_LOSS = 15;

	/**
	 * The number of structural features of the '<em>Muffler</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MUFFLER_FEATURE_COUNT = 16;

	/**
	 * The meta object id for the '{@link garboard.model.impl.RiserImpl <em>Riser</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.RiserImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getRiser()
	 * @generated
	 */
	int RISER = 30;

	/**
	 * The feature id for the '<em><b>Dry Crest Inside</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__DRY_CREST_INSIDE = 0;

	/**
	 * The feature id for the '<em><b>Injection On Falling Leg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__INJECTION_ON_FALLING_LEG = 1;

	/**
	 * The feature id for the '<em><b>Injection Points Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__INJECTION_POINTS_DOWN = 2;

	/**
	 * The feature id for the '<em><b>Injection Drop To Muffler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__INJECTION_DROP_TO_MUFFLER = 3;

	/**
	 * The feature id for the '<em><b>Lift Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__LIFT_HEIGHT = 4;

	/**
	 * The feature id for the '<em><b>Elbow Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__ELBOW_BORE = 5;

	/**
	 * The feature id for the '<em><b>Elbow Inspected On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER__ELBOW_INSPECTED_ON = 6;

	/**
	 * The number of structural features of the '<em>Riser</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RISER_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ExhaustCrestImpl <em>Exhaust Crest</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ExhaustCrestImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustCrest()
	 * @generated
	 */
	int EXHAUST_CREST = 31;

	/**
	 * The feature id for the '<em><b>Inside Bottom</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_CREST__INSIDE_BOTTOM = 0;

	/**
	 * The feature id for the '<em><b>Vented</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_CREST__VENTED = 1;

	/**
	 * The number of structural features of the '<em>Exhaust Crest</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_CREST_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ExhaustOutletImpl <em>Exhaust Outlet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ExhaustOutletImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustOutlet()
	 * @generated
	 */
	int EXHAUST_OUTLET = 32;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__PLACE = 0;

	/**
	 * The feature id for the '<em><b>Inside Bottom</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__INSIDE_BOTTOM = 1;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__BORE = 2;

	/**
	 * The feature id for the '<em><b>Anti Surge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__ANTI_SURGE = 3;

	/**
	 * The feature id for the '<em><b>Closed By Valve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__CLOSED_BY_VALVE = 4;

	/**
	 * The feature id for the '<em><b>Under Swim Platform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__UNDER_SWIM_PLATFORM = 5;

	/**
	 * The feature id for the '<em><b>Near Openings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__NEAR_OPENINGS = 6;

	/**
	 * The feature id for the '<em><b>Distance To Opening</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__DISTANCE_TO_OPENING = 7;

	/**
	 * The feature id for the '<em><b>Water Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__WATER_VISIBLE = 8;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET__MATERIAL = 9;

	/**
	 * The number of structural features of the '<em>Exhaust Outlet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXHAUST_OUTLET_FEATURE_COUNT = 10;

	/**
	 * The meta object id for the '{@link garboard.model.impl.SeparatorDrainImpl <em>Separator Drain</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.SeparatorDrainImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getSeparatorDrain()
	 * @generated
	 */
	int SEPARATOR_DRAIN = 33;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEPARATOR_DRAIN__BORE = 0;

	/**
	 * The feature id for the '<em><b>Base Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEPARATOR_DRAIN__BASE_HEIGHT = 1;

	/**
	 * The feature id for the '<em><b>Own Seacock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEPARATOR_DRAIN__OWN_SEACOCK = 2;

	/**
	 * The feature id for the '<em><b>Falls All The Way</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEPARATOR_DRAIN__FALLS_ALL_THE_WAY = 3;

	/**
	 * The feature id for the '<em><b>Gas Side Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEPARATOR_DRAIN__GAS_SIDE_PRESSURE = 4;

	/**
	 * The number of structural features of the '<em>Separator Drain</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEPARATOR_DRAIN_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link garboard.model.impl.VentilationImpl <em>Ventilation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.VentilationImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getVentilation()
	 * @generated
	 */
	int VENTILATION = 34;

	/**
	 * The feature id for the '<em><b>Net Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__NET_VOLUME = 0;

	/**
	 * The feature id for the '<em><b>Gross Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__GROSS_VOLUME = 1;

	/**
	 * The feature id for the '<em><b>Open Area To Atmosphere</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__OPEN_AREA_TO_ATMOSPHERE = 2;

	/**
	 * The feature id for the '<em><b>Connected Opening Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__CONNECTED_OPENING_FRACTION = 3;

	/**
	 * The feature id for the '<em><b>Compartment Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__COMPARTMENT_HEIGHT = 4;

	/**
	 * The feature id for the '<em><b>Bilge Water Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__BILGE_WATER_HEIGHT = 5;

	/**
	 * The feature id for the '<em><b>Ducts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__DUCTS = 6;

	/**
	 * The feature id for the '<em><b>Blower Rated Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__BLOWER_RATED_FLOW = 7;

	/**
	 * The feature id for the '<em><b>Blower Measured Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__BLOWER_MEASURED_FLOW = 8;

	/**
	 * The feature id for the '<em><b>Blower Label At Each Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__BLOWER_LABEL_AT_EACH_START = 9;

	/**
	 * The feature id for the '<em><b>Blower Interlocked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__BLOWER_INTERLOCKED = 10;

	/**
	 * The feature id for the '<em><b>Blower Ignition Protected</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__BLOWER_IGNITION_PROTECTED = 11;

	/**
	 * The feature id for the '<em><b>Sealed From Accommodation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__SEALED_FROM_ACCOMMODATION = 12;

	/**
	 * The feature id for the '<em><b>Supply From Outside</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__SUPPLY_FROM_OUTSIDE = 13;

	/**
	 * The feature id for the '<em><b>Supply Area Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__SUPPLY_AREA_TOTAL = 14;

	/**
	 * The feature id for the '<em><b>Exhaust Area Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__EXHAUST_AREA_TOTAL = 15;

	/**
	 * The feature id for the '<em><b>Natural Draught</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__NATURAL_DRAUGHT = 16;

	/**
	 * The feature id for the '<em><b>Outside Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__OUTSIDE_TEMPERATURE = 17;

	/**
	 * The feature id for the '<em><b>Compartment Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__COMPARTMENT_TEMPERATURE = 18;

	/**
	 * The feature id for the '<em><b>Air Inlet Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__AIR_INLET_TEMPERATURE = 19;

	/**
	 * The feature id for the '<em><b>Depression</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__DEPRESSION = 20;

	/**
	 * The feature id for the '<em><b>Design Ambient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__DESIGN_AMBIENT = 21;

	/**
	 * The feature id for the '<em><b>Ducts Low And High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__DUCTS_LOW_AND_HIGH = 22;

	/**
	 * The feature id for the '<em><b>Clear Of Exhaust Outlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__CLEAR_OF_EXHAUST_OUTLET = 23;

	/**
	 * The feature id for the '<em><b>Ignition Protected Components</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__IGNITION_PROTECTED_COMPONENTS = 24;

	/**
	 * The feature id for the '<em><b>Cranking Motor Fitted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__CRANKING_MOTOR_FITTED = 25;

	/**
	 * The feature id for the '<em><b>Fan Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION__FAN_FLOW = 26;

	/**
	 * The number of structural features of the '<em>Ventilation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VENTILATION_FEATURE_COUNT = 27;

	/**
	 * The meta object id for the '{@link garboard.model.impl.AirDuctImpl <em>Air Duct</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.AirDuctImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getAirDuct()
	 * @generated
	 */
	int AIR_DUCT = 35;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Function</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__FUNCTION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__AREA = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>End Fitting Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__END_FITTING_AREA = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Flexible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__FLEXIBLE = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Mouth Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__MOUTH_HEIGHT = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Terminates Outside</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT__TERMINATES_OUTSIDE = ITEM_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Air Duct</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AIR_DUCT_FEATURE_COUNT = ITEM_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link garboard.model.impl.MountingImpl <em>Mounting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.MountingImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getMounting()
	 * @generated
	 */
	int MOUNTING = 36;

	/**
	 * The feature id for the '<em><b>Beds Rigid</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__BEDS_RIGID = 0;

	/**
	 * The feature id for the '<em><b>Mounts Aligned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__MOUNTS_ALIGNED = 1;

	/**
	 * The feature id for the '<em><b>Clearance Around</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__CLEARANCE_AROUND = 2;

	/**
	 * The feature id for the '<em><b>Flexible Connections</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__FLEXIBLE_CONNECTIONS = 3;

	/**
	 * The feature id for the '<em><b>Drip Tray</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__DRIP_TRAY = 4;

	/**
	 * The feature id for the '<em><b>Access For Service</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__ACCESS_FOR_SERVICE = 5;

	/**
	 * The feature id for the '<em><b>Bonding Conductor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__BONDING_CONDUCTOR = 6;

	/**
	 * The feature id for the '<em><b>Bonded To Common Ground</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__BONDED_TO_COMMON_GROUND = 7;

	/**
	 * The feature id for the '<em><b>Common Negative Link</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__COMMON_NEGATIVE_LINK = 8;

	/**
	 * The feature id for the '<em><b>Dc Negative Isolated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__DC_NEGATIVE_ISOLATED = 9;

	/**
	 * The feature id for the '<em><b>Installed Angle Fore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__INSTALLED_ANGLE_FORE = 10;

	/**
	 * The feature id for the '<em><b>Installed Angle Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__INSTALLED_ANGLE_SIDE = 11;

	/**
	 * The feature id for the '<em><b>Height Above Bilge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__HEIGHT_ABOVE_BILGE = 12;

	/**
	 * The feature id for the '<em><b>Anodes Fitted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__ANODES_FITTED = 13;

	/**
	 * The feature id for the '<em><b>Labels Posted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__LABELS_POSTED = 14;

	/**
	 * The feature id for the '<em><b>Rotating Parts Guarded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING__ROTATING_PARTS_GUARDED = 15;

	/**
	 * The number of structural features of the '<em>Mounting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOUNTING_FEATURE_COUNT = 16;

	/**
	 * The meta object id for the '{@link garboard.model.impl.AcOutputImpl <em>Ac Output</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.AcOutputImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getAcOutput()
	 * @generated
	 */
	int AC_OUTPUT = 37;

	/**
	 * The feature id for the '<em><b>Transfer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__TRANSFER = 0;

	/**
	 * The feature id for the '<em><b>Protection Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__PROTECTION_DEVICE = 1;

	/**
	 * The feature id for the '<em><b>Protection Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__PROTECTION_RATING = 2;

	/**
	 * The feature id for the '<em><b>Trip Curve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__TRIP_CURVE = 3;

	/**
	 * The feature id for the '<em><b>Protection Poles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__PROTECTION_POLES = 4;

	/**
	 * The feature id for the '<em><b>Protection Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__PROTECTION_DISTANCE = 5;

	/**
	 * The feature id for the '<em><b>Residual Current Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__RESIDUAL_CURRENT_DEVICE = 6;

	/**
	 * The feature id for the '<em><b>Residual Trip Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__RESIDUAL_TRIP_CURRENT = 7;

	/**
	 * The feature id for the '<em><b>Residual Trip Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__RESIDUAL_TRIP_TIME = 8;

	/**
	 * The feature id for the '<em><b>Output Cable</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__OUTPUT_CABLE = 9;

	/**
	 * The feature id for the '<em><b>Neutral Bond</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__NEUTRAL_BOND = 10;

	/**
	 * The feature id for the '<em><b>Protective Conductor Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE = 11;

	/**
	 * The feature id for the '<em><b>Protective Conductor Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE = 12;

	/**
	 * The feature id for the '<em><b>Neutral Ground Conductor Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE = 13;

	/**
	 * The feature id for the '<em><b>Insulation Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__INSULATION_RESISTANCE = 14;

	/**
	 * The feature id for the '<em><b>Insulation Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__INSULATION_TEMPERATURE = 15;

	/**
	 * The feature id for the '<em><b>Polarity Indicator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__POLARITY_INDICATOR = 16;

	/**
	 * The feature id for the '<em><b>Polarity Tested</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__POLARITY_TESTED = 17;

	/**
	 * The feature id for the '<em><b>Voltmeter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__VOLTMETER = 18;

	/**
	 * The feature id for the '<em><b>Ammeter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__AMMETER = 19;

	/**
	 * The feature id for the '<em><b>Frequency Meter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__FREQUENCY_METER = 20;

	/**
	 * The feature id for the '<em><b>Name Plate Readable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__NAME_PLATE_READABLE = 21;

	/**
	 * The feature id for the '<em><b>Earthed Parts Bonded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__EARTHED_PARTS_BONDED = 22;

	/**
	 * The feature id for the '<em><b>Ground Detection</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__GROUND_DETECTION = 23;

	/**
	 * The feature id for the '<em><b>Loads</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__LOADS = 24;

	/**
	 * The feature id for the '<em><b>No Load Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__NO_LOAD_VOLTAGE = 25;

	/**
	 * The feature id for the '<em><b>No Load Frequency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__NO_LOAD_FREQUENCY = 26;

	/**
	 * The feature id for the '<em><b>Leg ACurrent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__LEG_ACURRENT = 27;

	/**
	 * The feature id for the '<em><b>Leg BCurrent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__LEG_BCURRENT = 28;

	/**
	 * The feature id for the '<em><b>Shore Inlet Residual Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE = 29;

	/**
	 * The number of structural features of the '<em>Ac Output</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AC_OUTPUT_FEATURE_COUNT = 30;

	/**
	 * The meta object id for the '{@link garboard.model.impl.TransferSwitchImpl <em>Transfer Switch</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.TransferSwitchImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getTransferSwitch()
	 * @generated
	 */
	int TRANSFER_SWITCH = 38;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH__KIND = 0;

	/**
	 * The feature id for the '<em><b>Poles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH__POLES = 1;

	/**
	 * The feature id for the '<em><b>Interlocked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH__INTERLOCKED = 2;

	/**
	 * The feature id for the '<em><b>Back Feed Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH__BACK_FEED_VOLTAGE = 3;

	/**
	 * The feature id for the '<em><b>Tested</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH__TESTED = 4;

	/**
	 * The feature id for the '<em><b>Rated Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH__RATED_CURRENT = 5;

	/**
	 * The number of structural features of the '<em>Transfer Switch</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSFER_SWITCH_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ElectricalLoadImpl <em>Electrical Load</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ElectricalLoadImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getElectricalLoad()
	 * @generated
	 */
	int ELECTRICAL_LOAD = 39;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__KIND = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__POWER = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__EFFICIENCY = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Power Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__POWER_FACTOR = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Demand Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__DEMAND_FACTOR = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__GROUP = ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Exclusive With</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__EXCLUSIVE_WITH = ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Phase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__PHASE = ITEM_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Motor Horsepower</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__MOTOR_HORSEPOWER = ITEM_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Code Letter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__CODE_LETTER = ITEM_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Locked Rotor Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT = ITEM_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Starting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__STARTING = ITEM_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__VOLTAGE = ITEM_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD__CONDITION = ITEM_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Electrical Load</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELECTRICAL_LOAD_FEATURE_COUNT = ITEM_FEATURE_COUNT + 15;

	/**
	 * The meta object id for the '{@link garboard.model.impl.AlarmsAndSafetyImpl <em>Alarms And Safety</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.AlarmsAndSafetyImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getAlarmsAndSafety()
	 * @generated
	 */
	int ALARMS_AND_SAFETY = 40;

	/**
	 * The feature id for the '<em><b>Alarms</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__ALARMS = 0;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide In Every Space</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE = 1;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide Marked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED = 2;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide Expiry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY = 3;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide Always Powered</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED = 4;

	/**
	 * The feature id for the '<em><b>Habitable Spaces</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__HABITABLE_SPACES = 5;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide Alarms</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS = 6;

	/**
	 * The feature id for the '<em><b>Vapour Detector</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__VAPOUR_DETECTOR = 7;

	/**
	 * The feature id for the '<em><b>Vapour Sensor Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW = 8;

	/**
	 * The feature id for the '<em><b>Vapour Before Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__VAPOUR_BEFORE_START = 9;

	/**
	 * The feature id for the '<em><b>Fire Extinguisher</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__FIRE_EXTINGUISHER = 10;

	/**
	 * The feature id for the '<em><b>Fixed Fire System</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM = 11;

	/**
	 * The feature id for the '<em><b>Fire System Stops Set</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET = 12;

	/**
	 * The feature id for the '<em><b>Fire Discharge Port</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT = 13;

	/**
	 * The feature id for the '<em><b>Remote Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__REMOTE_STOP = 14;

	/**
	 * The feature id for the '<em><b>Warning Labels</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY__WARNING_LABELS = 15;

	/**
	 * The number of structural features of the '<em>Alarms And Safety</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARMS_AND_SAFETY_FEATURE_COUNT = 16;

	/**
	 * The meta object id for the '{@link garboard.model.impl.AlarmDeviceImpl <em>Alarm Device</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.AlarmDeviceImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getAlarmDevice()
	 * @generated
	 */
	int ALARM_DEVICE = 41;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__KIND = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Location</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__LOCATION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Setting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__SETTING = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Test Result</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__TEST_RESULT = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Tested On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__TESTED_ON = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Expires On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE__EXPIRES_ON = ITEM_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Alarm Device</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALARM_DEVICE_FEATURE_COUNT = ITEM_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link garboard.model.impl.InspectionAnswerImpl <em>Inspection Answer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.InspectionAnswerImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getInspectionAnswer()
	 * @generated
	 */
	int INSPECTION_ANSWER = 42;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__QUESTION = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Answer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__ANSWER = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__NOTE = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Answered By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__ANSWERED_BY = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Answered On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__ANSWERED_ON = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Photographs</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__PHOTOGRAPHS = ITEM_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Inspection Answer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER_FEATURE_COUNT = ITEM_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link garboard.model.impl.TrialImpl <em>Trial</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.TrialImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getTrial()
	 * @generated
	 */
	int TRIAL = 43;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__DATE = 0;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PLACE = 1;

	/**
	 * The feature id for the '<em><b>Location</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LOCATION = 2;

	/**
	 * The feature id for the '<em><b>People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PEOPLE = 3;

	/**
	 * The feature id for the '<em><b>Sea Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__SEA_TEMPERATURE = 4;

	/**
	 * The feature id for the '<em><b>Outside Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__OUTSIDE_TEMPERATURE = 5;

	/**
	 * The feature id for the '<em><b>Barometric Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__BAROMETRIC_PRESSURE = 6;

	/**
	 * The feature id for the '<em><b>Relative Humidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__RELATIVE_HUMIDITY = 7;

	/**
	 * The feature id for the '<em><b>Head Of Water</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__HEAD_OF_WATER = 8;

	/**
	 * The feature id for the '<em><b>Procedure</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PROCEDURE = 9;

	/**
	 * The feature id for the '<em><b>Priming</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PRIMING = 10;

	/**
	 * The feature id for the '<em><b>Attempts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ATTEMPTS = 11;

	/**
	 * The feature id for the '<em><b>Load Steps</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LOAD_STEPS = 12;

	/**
	 * The feature id for the '<em><b>Shutdown Tests</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__SHUTDOWN_TESTS = 13;

	/**
	 * The feature id for the '<em><b>Sea Run</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__SEA_RUN = 14;

	/**
	 * The feature id for the '<em><b>Coolant Level Cold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__COOLANT_LEVEL_COLD = 15;

	/**
	 * The feature id for the '<em><b>Coolant Level Hot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__COOLANT_LEVEL_HOT = 16;

	/**
	 * The feature id for the '<em><b>Coolant Level Cold Again</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__COOLANT_LEVEL_COLD_AGAIN = 17;

	/**
	 * The feature id for the '<em><b>Leaks Cold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LEAKS_COLD = 18;

	/**
	 * The feature id for the '<em><b>Leaks Hot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LEAKS_HOT = 19;

	/**
	 * The feature id for the '<em><b>Water At Outlet After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__WATER_AT_OUTLET_AFTER = 20;

	/**
	 * The feature id for the '<em><b>Oil Pressure After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__OIL_PRESSURE_AFTER = 21;

	/**
	 * The feature id for the '<em><b>Muffler Level Checked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__MUFFLER_LEVEL_CHECKED = 22;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__REMARKS = 23;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide Cabin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CARBON_MONOXIDE_CABIN = 24;

	/**
	 * The number of structural features of the '<em>Trial</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL_FEATURE_COUNT = 25;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ProcedureStepImpl <em>Procedure Step</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ProcedureStepImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getProcedureStep()
	 * @generated
	 */
	int PROCEDURE_STEP = 44;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP__NUMBER = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP__STEP = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP__DONE = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP__AT = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP__NOTE = ITEM_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Procedure Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCEDURE_STEP_FEATURE_COUNT = ITEM_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link garboard.model.impl.FuelPrimingImpl <em>Fuel Priming</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.FuelPrimingImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelPriming()
	 * @generated
	 */
	int FUEL_PRIMING = 45;

	/**
	 * The feature id for the '<em><b>Key Cycles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__KEY_CYCLES = 0;

	/**
	 * The feature id for the '<em><b>Cycle Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__CYCLE_TIME = 1;

	/**
	 * The feature id for the '<em><b>Feed Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__FEED_PRESSURE = 2;

	/**
	 * The feature id for the '<em><b>Rail Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__RAIL_PRESSURE = 3;

	/**
	 * The feature id for the '<em><b>Held For</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__HELD_FOR = 4;

	/**
	 * The feature id for the '<em><b>Bubbles Gone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__BUBBLES_GONE = 5;

	/**
	 * The feature id for the '<em><b>Leaks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING__LEAKS = 6;

	/**
	 * The number of structural features of the '<em>Fuel Priming</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FUEL_PRIMING_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link garboard.model.impl.CrankingAttemptImpl <em>Cranking Attempt</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.CrankingAttemptImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getCrankingAttempt()
	 * @generated
	 */
	int CRANKING_ATTEMPT = 46;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__AT = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__DURATION = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__REST = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Seacock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__SEACOCK = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Fired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__FIRED = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Lowest Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__LOWEST_VOLTAGE = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Muffler Drained</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT__MUFFLER_DRAINED = ITEM_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Cranking Attempt</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CRANKING_ATTEMPT_FEATURE_COUNT = ITEM_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link garboard.model.impl.LoadStepImpl <em>Load Step</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.LoadStepImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getLoadStep()
	 * @generated
	 */
	int LOAD_STEP = 47;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOAD_STEP__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOAD_STEP__LOAD = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Dwell</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOAD_STEP__DWELL = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Readings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOAD_STEP__READINGS = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOAD_STEP__REMARKS = ITEM_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Load Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOAD_STEP_FEATURE_COUNT = ITEM_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ReadingImpl <em>Reading</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ReadingImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getReading()
	 * @generated
	 */
	int READING = 48;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__AT = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Voltage1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VOLTAGE1 = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Voltage2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VOLTAGE2 = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Voltage3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VOLTAGE3 = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Current1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CURRENT1 = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Current2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CURRENT2 = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Current3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CURRENT3 = ITEM_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Frequency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__FREQUENCY = ITEM_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__POWER = ITEM_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Power Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__POWER_FACTOR = ITEM_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Oil Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__OIL_PRESSURE = ITEM_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Coolant Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__COOLANT_TEMPERATURE = ITEM_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Raw Water In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__RAW_WATER_IN = ITEM_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Raw Water Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__RAW_WATER_OUT = ITEM_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Exhaust Mixed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__EXHAUST_MIXED = ITEM_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Exhaust Dry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__EXHAUST_DRY = ITEM_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__BACK_PRESSURE = ITEM_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Compartment Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__COMPARTMENT_TEMPERATURE = ITEM_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Outside Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__OUTSIDE_TEMPERATURE = ITEM_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Compartment Depression</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__COMPARTMENT_DEPRESSION = ITEM_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Fuel Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__FUEL_VACUUM = ITEM_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Raw Water Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__RAW_WATER_VACUUM = ITEM_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Raw Water Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__RAW_WATER_FLOW = ITEM_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Battery Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__BATTERY_VOLTAGE = ITEM_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Charge Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CHARGE_CURRENT = ITEM_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Carbon Monoxide</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CARBON_MONOXIDE = ITEM_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Smoke</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__SMOKE = ITEM_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__NOTE = ITEM_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Instruments</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__INSTRUMENTS = ITEM_FEATURE_COUNT + 28;

	/**
	 * The number of structural features of the '<em>Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING_FEATURE_COUNT = ITEM_FEATURE_COUNT + 29;

	/**
	 * The meta object id for the '{@link garboard.model.impl.SeaRunImpl <em>Sea Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.SeaRunImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getSeaRun()
	 * @generated
	 */
	int SEA_RUN = 49;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__DATE = 0;

	/**
	 * The feature id for the '<em><b>Heel Port</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__HEEL_PORT = 1;

	/**
	 * The feature id for the '<em><b>Heel Starboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__HEEL_STARBOARD = 2;

	/**
	 * The feature id for the '<em><b>Trim Up</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__TRIM_UP = 3;

	/**
	 * The feature id for the '<em><b>Trim Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__TRIM_DOWN = 4;

	/**
	 * The feature id for the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__SPEED = 5;

	/**
	 * The feature id for the '<em><b>Water Flowing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__WATER_FLOWING = 6;

	/**
	 * The feature id for the '<em><b>Water Over Crest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__WATER_OVER_CREST = 7;

	/**
	 * The feature id for the '<em><b>Water In Muffler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__WATER_IN_MUFFLER = 8;

	/**
	 * The feature id for the '<em><b>Difference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__DIFFERENCE = 9;

	/**
	 * The feature id for the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN__DURATION = 10;

	/**
	 * The number of structural features of the '<em>Sea Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEA_RUN_FEATURE_COUNT = 11;

	/**
	 * The meta object id for the '{@link garboard.model.impl.UpkeepImpl <em>Upkeep</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.UpkeepImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getUpkeep()
	 * @generated
	 */
	int UPKEEP = 50;

	/**
	 * The feature id for the '<em><b>Tasks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP__TASKS = 0;

	/**
	 * The feature id for the '<em><b>Consumables</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP__CONSUMABLES = 1;

	/**
	 * The feature id for the '<em><b>Annual Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP__ANNUAL_HOURS = 2;

	/**
	 * The number of structural features of the '<em>Upkeep</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_FEATURE_COUNT = 3;

	/**
	 * The meta object id for the '{@link garboard.model.impl.UpkeepTaskImpl <em>Upkeep Task</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.UpkeepTaskImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getUpkeepTask()
	 * @generated
	 */
	int UPKEEP_TASK = 51;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Task</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__TASK = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Every Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__EVERY_HOURS = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Every Months</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__EVERY_MONTHS = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Last Done On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__LAST_DONE_ON = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Last Done Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__LAST_DONE_HOURS = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__NOTE = ITEM_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Upkeep Task</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK_FEATURE_COUNT = ITEM_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link garboard.model.impl.ConsumableImpl <em>Consumable</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.ConsumableImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getConsumable()
	 * @generated
	 */
	int CONSUMABLE = 52;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONSUMABLE__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONSUMABLE__NAME = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Part Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONSUMABLE__PART_NUMBER = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONSUMABLE__QUANTITY = ITEM_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Consumable</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONSUMABLE_FEATURE_COUNT = ITEM_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link garboard.model.impl.AcceptanceImpl <em>Acceptance</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.AcceptanceImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getAcceptance()
	 * @generated
	 */
	int ACCEPTANCE = 53;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Check</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__CHECK = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__SUBJECT = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__REASON = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Accepted By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__ACCEPTED_BY = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Accepted On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__ACCEPTED_ON = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE__UNTIL = ITEM_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Acceptance</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTANCE_FEATURE_COUNT = ITEM_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link garboard.model.impl.SignatureImpl <em>Signature</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.SignatureImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getSignature()
	 * @generated
	 */
	int SIGNATURE = 54;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__ROLE = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__NAME = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__LICENCE = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__PLACE = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Signed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__SIGNED_ON = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Statement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__STATEMENT = ITEM_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Verdicts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE__VERDICTS = ITEM_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Signature</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNATURE_FEATURE_COUNT = ITEM_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link garboard.model.impl.UnreadEntryImpl <em>Unread Entry</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.UnreadEntryImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getUnreadEntry()
	 * @generated
	 */
	int UNREAD_ENTRY = 55;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNREAD_ENTRY__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNREAD_ENTRY__PLACE = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNREAD_ENTRY__TEXT = ITEM_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Unread Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNREAD_ENTRY_FEATURE_COUNT = ITEM_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link garboard.model.impl.StoredVerdictImpl <em>Stored Verdict</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.impl.StoredVerdictImpl
	 * @see garboard.model.impl.GarboardPackageImpl#getStoredVerdict()
	 * @generated
	 */
	int STORED_VERDICT = 56;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__ID = ITEM__ID;

	/**
	 * The feature id for the '<em><b>Check</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__CHECK = ITEM_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__SUBJECT = ITEM_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Standing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__STANDING = ITEM_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Measured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__MEASURED = ITEM_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__LIMIT = ITEM_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT__MARGIN = ITEM_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Stored Verdict</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STORED_VERDICT_FEATURE_COUNT = ITEM_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link garboard.model.Answer <em>Answer</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.Answer
	 * @see garboard.model.impl.GarboardPackageImpl#getAnswer()
	 * @generated
	 */
	int ANSWER = 57;

	/**
	 * The meta object id for the '{@link garboard.model.PartyRole <em>Party Role</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.PartyRole
	 * @see garboard.model.impl.GarboardPackageImpl#getPartyRole()
	 * @generated
	 */
	int PARTY_ROLE = 58;

	/**
	 * The meta object id for the '{@link garboard.model.HullKind <em>Hull Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.HullKind
	 * @see garboard.model.impl.GarboardPackageImpl#getHullKind()
	 * @generated
	 */
	int HULL_KIND = 59;

	/**
	 * The meta object id for the '{@link garboard.model.HullMaterial <em>Hull Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.HullMaterial
	 * @see garboard.model.impl.GarboardPackageImpl#getHullMaterial()
	 * @generated
	 */
	int HULL_MATERIAL = 60;

	/**
	 * The meta object id for the '{@link garboard.model.VesselService <em>Vessel Service</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.VesselService
	 * @see garboard.model.impl.GarboardPackageImpl#getVesselService()
	 * @generated
	 */
	int VESSEL_SERVICE = 61;

	/**
	 * The meta object id for the '{@link garboard.model.FuelKind <em>Fuel Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.FuelKind
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelKind()
	 * @generated
	 */
	int FUEL_KIND = 62;

	/**
	 * The meta object id for the '{@link garboard.model.Aspiration <em>Aspiration</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.Aspiration
	 * @see garboard.model.impl.GarboardPackageImpl#getAspiration()
	 * @generated
	 */
	int ASPIRATION = 63;

	/**
	 * The meta object id for the '{@link garboard.model.FuelSystem <em>Fuel System</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.FuelSystem
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelSystem()
	 * @generated
	 */
	int FUEL_SYSTEM = 64;

	/**
	 * The meta object id for the '{@link garboard.model.Cooling <em>Cooling</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.Cooling
	 * @see garboard.model.impl.GarboardPackageImpl#getCooling()
	 * @generated
	 */
	int COOLING = 65;

	/**
	 * The meta object id for the '{@link garboard.model.PhaseSystem <em>Phase System</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.PhaseSystem
	 * @see garboard.model.impl.GarboardPackageImpl#getPhaseSystem()
	 * @generated
	 */
	int PHASE_SYSTEM = 66;

	/**
	 * The meta object id for the '{@link garboard.model.DutyRating <em>Duty Rating</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.DutyRating
	 * @see garboard.model.impl.GarboardPackageImpl#getDutyRating()
	 * @generated
	 */
	int DUTY_RATING = 67;

	/**
	 * The meta object id for the '{@link garboard.model.PerformanceClass <em>Performance Class</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.PerformanceClass
	 * @see garboard.model.impl.GarboardPackageImpl#getPerformanceClass()
	 * @generated
	 */
	int PERFORMANCE_CLASS = 68;

	/**
	 * The meta object id for the '{@link garboard.model.BatteryChemistry <em>Battery Chemistry</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.BatteryChemistry
	 * @see garboard.model.impl.GarboardPackageImpl#getBatteryChemistry()
	 * @generated
	 */
	int BATTERY_CHEMISTRY = 69;

	/**
	 * The meta object id for the '{@link garboard.model.CrankingRatingDefinition <em>Cranking Rating Definition</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.CrankingRatingDefinition
	 * @see garboard.model.impl.GarboardPackageImpl#getCrankingRatingDefinition()
	 * @generated
	 */
	int CRANKING_RATING_DEFINITION = 70;

	/**
	 * The meta object id for the '{@link garboard.model.TerminalKind <em>Terminal Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.TerminalKind
	 * @see garboard.model.impl.GarboardPackageImpl#getTerminalKind()
	 * @generated
	 */
	int TERMINAL_KIND = 71;

	/**
	 * The meta object id for the '{@link garboard.model.CableFunction <em>Cable Function</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.CableFunction
	 * @see garboard.model.impl.GarboardPackageImpl#getCableFunction()
	 * @generated
	 */
	int CABLE_FUNCTION = 72;

	/**
	 * The meta object id for the '{@link garboard.model.StrandClass <em>Strand Class</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.StrandClass
	 * @see garboard.model.impl.GarboardPackageImpl#getStrandClass()
	 * @generated
	 */
	int STRAND_CLASS = 73;

	/**
	 * The meta object id for the '{@link garboard.model.InsulationRating <em>Insulation Rating</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.InsulationRating
	 * @see garboard.model.impl.GarboardPackageImpl#getInsulationRating()
	 * @generated
	 */
	int INSULATION_RATING = 74;

	/**
	 * The meta object id for the '{@link garboard.model.ProtectionKind <em>Protection Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.ProtectionKind
	 * @see garboard.model.impl.GarboardPackageImpl#getProtectionKind()
	 * @generated
	 */
	int PROTECTION_KIND = 75;

	/**
	 * The meta object id for the '{@link garboard.model.TankMaterial <em>Tank Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.TankMaterial
	 * @see garboard.model.impl.GarboardPackageImpl#getTankMaterial()
	 * @generated
	 */
	int TANK_MATERIAL = 76;

	/**
	 * The meta object id for the '{@link garboard.model.FuelLineFunction <em>Fuel Line Function</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.FuelLineFunction
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelLineFunction()
	 * @generated
	 */
	int FUEL_LINE_FUNCTION = 77;

	/**
	 * The meta object id for the '{@link garboard.model.FuelLineKind <em>Fuel Line Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.FuelLineKind
	 * @see garboard.model.impl.GarboardPackageImpl#getFuelLineKind()
	 * @generated
	 */
	int FUEL_LINE_KIND = 78;

	/**
	 * The meta object id for the '{@link garboard.model.BowlKind <em>Bowl Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.BowlKind
	 * @see garboard.model.impl.GarboardPackageImpl#getBowlKind()
	 * @generated
	 */
	int BOWL_KIND = 79;

	/**
	 * The meta object id for the '{@link garboard.model.AntiSiphonProtection <em>Anti Siphon Protection</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.AntiSiphonProtection
	 * @see garboard.model.impl.GarboardPackageImpl#getAntiSiphonProtection()
	 * @generated
	 */
	int ANTI_SIPHON_PROTECTION = 80;

	/**
	 * The meta object id for the '{@link garboard.model.StrainerPickUp <em>Strainer Pick Up</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.StrainerPickUp
	 * @see garboard.model.impl.GarboardPackageImpl#getStrainerPickUp()
	 * @generated
	 */
	int STRAINER_PICK_UP = 81;

	/**
	 * The meta object id for the '{@link garboard.model.ValveKind <em>Valve Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.ValveKind
	 * @see garboard.model.impl.GarboardPackageImpl#getValveKind()
	 * @generated
	 */
	int VALVE_KIND = 82;

	/**
	 * The meta object id for the '{@link garboard.model.FittingMaterial <em>Fitting Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.FittingMaterial
	 * @see garboard.model.impl.GarboardPackageImpl#getFittingMaterial()
	 * @generated
	 */
	int FITTING_MATERIAL = 83;

	/**
	 * The meta object id for the '{@link garboard.model.WaterHoseKind <em>Water Hose Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.WaterHoseKind
	 * @see garboard.model.impl.GarboardPackageImpl#getWaterHoseKind()
	 * @generated
	 */
	int WATER_HOSE_KIND = 84;

	/**
	 * The meta object id for the '{@link garboard.model.WaterSection <em>Water Section</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.WaterSection
	 * @see garboard.model.impl.GarboardPackageImpl#getWaterSection()
	 * @generated
	 */
	int WATER_SECTION = 85;

	/**
	 * The meta object id for the '{@link garboard.model.PipeFittingKind <em>Pipe Fitting Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.PipeFittingKind
	 * @see garboard.model.impl.GarboardPackageImpl#getPipeFittingKind()
	 * @generated
	 */
	int PIPE_FITTING_KIND = 86;

	/**
	 * The meta object id for the '{@link garboard.model.SiphonBreakKind <em>Siphon Break Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.SiphonBreakKind
	 * @see garboard.model.impl.GarboardPackageImpl#getSiphonBreakKind()
	 * @generated
	 */
	int SIPHON_BREAK_KIND = 87;

	/**
	 * The meta object id for the '{@link garboard.model.SiphonBreakPlace <em>Siphon Break Place</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.SiphonBreakPlace
	 * @see garboard.model.impl.GarboardPackageImpl#getSiphonBreakPlace()
	 * @generated
	 */
	int SIPHON_BREAK_PLACE = 88;

	/**
	 * The meta object id for the '{@link garboard.model.VentHoseEnd <em>Vent Hose End</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.VentHoseEnd
	 * @see garboard.model.impl.GarboardPackageImpl#getVentHoseEnd()
	 * @generated
	 */
	int VENT_HOSE_END = 89;

	/**
	 * The meta object id for the '{@link garboard.model.ExhaustSection <em>Exhaust Section</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.ExhaustSection
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustSection()
	 * @generated
	 */
	int EXHAUST_SECTION = 90;

	/**
	 * The meta object id for the '{@link garboard.model.ExhaustHoseStandard <em>Exhaust Hose Standard</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.ExhaustHoseStandard
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustHoseStandard()
	 * @generated
	 */
	int EXHAUST_HOSE_STANDARD = 91;

	/**
	 * The meta object id for the '{@link garboard.model.ExhaustBendKind <em>Exhaust Bend Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.ExhaustBendKind
	 * @see garboard.model.impl.GarboardPackageImpl#getExhaustBendKind()
	 * @generated
	 */
	int EXHAUST_BEND_KIND = 92;

	/**
	 * The meta object id for the '{@link garboard.model.MufflerKind <em>Muffler Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.MufflerKind
	 * @see garboard.model.impl.GarboardPackageImpl#getMufflerKind()
	 * @generated
	 */
	int MUFFLER_KIND = 93;

	/**
	 * The meta object id for the '{@link garboard.model.OutletPlace <em>Outlet Place</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.OutletPlace
	 * @see garboard.model.impl.GarboardPackageImpl#getOutletPlace()
	 * @generated
	 */
	int OUTLET_PLACE = 94;

	/**
	 * The meta object id for the '{@link garboard.model.AntiSurge <em>Anti Surge</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.AntiSurge
	 * @see garboard.model.impl.GarboardPackageImpl#getAntiSurge()
	 * @generated
	 */
	int ANTI_SURGE = 95;

	/**
	 * The meta object id for the '{@link garboard.model.DuctFunction <em>Duct Function</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.DuctFunction
	 * @see garboard.model.impl.GarboardPackageImpl#getDuctFunction()
	 * @generated
	 */
	int DUCT_FUNCTION = 96;

	/**
	 * The meta object id for the '{@link garboard.model.NeutralBond <em>Neutral Bond</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.NeutralBond
	 * @see garboard.model.impl.GarboardPackageImpl#getNeutralBond()
	 * @generated
	 */
	int NEUTRAL_BOND = 97;

	/**
	 * The meta object id for the '{@link garboard.model.TransferKind <em>Transfer Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.TransferKind
	 * @see garboard.model.impl.GarboardPackageImpl#getTransferKind()
	 * @generated
	 */
	int TRANSFER_KIND = 98;

	/**
	 * The meta object id for the '{@link garboard.model.PolesSwitched <em>Poles Switched</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.PolesSwitched
	 * @see garboard.model.impl.GarboardPackageImpl#getPolesSwitched()
	 * @generated
	 */
	int POLES_SWITCHED = 99;

	/**
	 * The meta object id for the '{@link garboard.model.TripCurve <em>Trip Curve</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.TripCurve
	 * @see garboard.model.impl.GarboardPackageImpl#getTripCurve()
	 * @generated
	 */
	int TRIP_CURVE = 100;

	/**
	 * The meta object id for the '{@link garboard.model.LoadKind <em>Load Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.LoadKind
	 * @see garboard.model.impl.GarboardPackageImpl#getLoadKind()
	 * @generated
	 */
	int LOAD_KIND = 101;

	/**
	 * The meta object id for the '{@link garboard.model.MotorStarting <em>Motor Starting</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.MotorStarting
	 * @see garboard.model.impl.GarboardPackageImpl#getMotorStarting()
	 * @generated
	 */
	int MOTOR_STARTING = 102;

	/**
	 * The meta object id for the '{@link garboard.model.AlarmKind <em>Alarm Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.AlarmKind
	 * @see garboard.model.impl.GarboardPackageImpl#getAlarmKind()
	 * @generated
	 */
	int ALARM_KIND = 103;

	/**
	 * The meta object id for the '{@link garboard.model.TestResult <em>Test Result</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.TestResult
	 * @see garboard.model.impl.GarboardPackageImpl#getTestResult()
	 * @generated
	 */
	int TEST_RESULT = 104;

	/**
	 * The meta object id for the '{@link garboard.model.SeacockState <em>Seacock State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.SeacockState
	 * @see garboard.model.impl.GarboardPackageImpl#getSeacockState()
	 * @generated
	 */
	int SEACOCK_STATE = 105;

	/**
	 * The meta object id for the '{@link garboard.model.TrialPlace <em>Trial Place</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.TrialPlace
	 * @see garboard.model.impl.GarboardPackageImpl#getTrialPlace()
	 * @generated
	 */
	int TRIAL_PLACE = 106;

	/**
	 * The meta object id for the '{@link garboard.model.SignatureRole <em>Signature Role</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.SignatureRole
	 * @see garboard.model.impl.GarboardPackageImpl#getSignatureRole()
	 * @generated
	 */
	int SIGNATURE_ROLE = 107;

	/**
	 * The meta object id for the '{@link garboard.model.SmokeColour <em>Smoke Colour</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.model.SmokeColour
	 * @see garboard.model.impl.GarboardPackageImpl#getSmokeColour()
	 * @generated
	 */
	int SMOKE_COLOUR = 108;

	/**
	 * The meta object id for the '<em>Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Length
	 * @see garboard.model.impl.GarboardPackageImpl#getLength()
	 * @generated
	 */
	int LENGTH = 109;

	/**
	 * The meta object id for the '<em>Area</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Area
	 * @see garboard.model.impl.GarboardPackageImpl#getArea()
	 * @generated
	 */
	int AREA = 110;

	/**
	 * The meta object id for the '<em>Volume</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Volume
	 * @see garboard.model.impl.GarboardPackageImpl#getVolume()
	 * @generated
	 */
	int VOLUME = 111;

	/**
	 * The meta object id for the '<em>Mass</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Mass
	 * @see garboard.model.impl.GarboardPackageImpl#getMass()
	 * @generated
	 */
	int MASS = 112;

	/**
	 * The meta object id for the '<em>Angle</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Angle
	 * @see garboard.model.impl.GarboardPackageImpl#getAngle()
	 * @generated
	 */
	int ANGLE = 113;

	/**
	 * The meta object id for the '<em>Slope</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Slope
	 * @see garboard.model.impl.GarboardPackageImpl#getSlope()
	 * @generated
	 */
	int SLOPE = 114;

	/**
	 * The meta object id for the '<em>Speed</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Speed
	 * @see garboard.model.impl.GarboardPackageImpl#getSpeed()
	 * @generated
	 */
	int SPEED = 115;

	/**
	 * The meta object id for the '<em>Time Span</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.TimeSpan
	 * @see garboard.model.impl.GarboardPackageImpl#getTimeSpan()
	 * @generated
	 */
	int TIME_SPAN = 116;

	/**
	 * The meta object id for the '<em>Frequency</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Frequency
	 * @see garboard.model.impl.GarboardPackageImpl#getFrequency()
	 * @generated
	 */
	int FREQUENCY = 117;

	/**
	 * The meta object id for the '<em>Rotational Speed</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.RotationalSpeed
	 * @see garboard.model.impl.GarboardPackageImpl#getRotationalSpeed()
	 * @generated
	 */
	int ROTATIONAL_SPEED = 118;

	/**
	 * The meta object id for the '<em>Absolute Pressure</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.AbsolutePressure
	 * @see garboard.model.impl.GarboardPackageImpl#getAbsolutePressure()
	 * @generated
	 */
	int ABSOLUTE_PRESSURE = 119;

	/**
	 * The meta object id for the '<em>Gauge Pressure</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.GaugePressure
	 * @see garboard.model.impl.GarboardPackageImpl#getGaugePressure()
	 * @generated
	 */
	int GAUGE_PRESSURE = 120;

	/**
	 * The meta object id for the '<em>Pressure Difference</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.PressureDifference
	 * @see garboard.model.impl.GarboardPackageImpl#getPressureDifference()
	 * @generated
	 */
	int PRESSURE_DIFFERENCE = 121;

	/**
	 * The meta object id for the '<em>Temperature</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Temperature
	 * @see garboard.model.impl.GarboardPackageImpl#getTemperature()
	 * @generated
	 */
	int TEMPERATURE = 122;

	/**
	 * The meta object id for the '<em>Temperature Difference</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.TemperatureDifference
	 * @see garboard.model.impl.GarboardPackageImpl#getTemperatureDifference()
	 * @generated
	 */
	int TEMPERATURE_DIFFERENCE = 123;

	/**
	 * The meta object id for the '<em>Volume Flow</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.VolumeFlow
	 * @see garboard.model.impl.GarboardPackageImpl#getVolumeFlow()
	 * @generated
	 */
	int VOLUME_FLOW = 124;

	/**
	 * The meta object id for the '<em>Mass Flow</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.MassFlow
	 * @see garboard.model.impl.GarboardPackageImpl#getMassFlow()
	 * @generated
	 */
	int MASS_FLOW = 125;

	/**
	 * The meta object id for the '<em>Power</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Power
	 * @see garboard.model.impl.GarboardPackageImpl#getPower()
	 * @generated
	 */
	int POWER = 126;

	/**
	 * The meta object id for the '<em>Apparent Power</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.ApparentPower
	 * @see garboard.model.impl.GarboardPackageImpl#getApparentPower()
	 * @generated
	 */
	int APPARENT_POWER = 127;

	/**
	 * The meta object id for the '<em>Voltage</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Voltage
	 * @see garboard.model.impl.GarboardPackageImpl#getVoltage()
	 * @generated
	 */
	int VOLTAGE = 128;

	/**
	 * The meta object id for the '<em>Current</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Current
	 * @see garboard.model.impl.GarboardPackageImpl#getCurrent()
	 * @generated
	 */
	int CURRENT = 129;

	/**
	 * The meta object id for the '<em>Resistance</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Resistance
	 * @see garboard.model.impl.GarboardPackageImpl#getResistance()
	 * @generated
	 */
	int RESISTANCE = 130;

	/**
	 * The meta object id for the '<em>Charge</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Charge
	 * @see garboard.model.impl.GarboardPackageImpl#getCharge()
	 * @generated
	 */
	int CHARGE = 131;

	/**
	 * The meta object id for the '<em>Specific Consumption</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.SpecificConsumption
	 * @see garboard.model.impl.GarboardPackageImpl#getSpecificConsumption()
	 * @generated
	 */
	int SPECIFIC_CONSUMPTION = 132;

	/**
	 * The meta object id for the '<em>Ratio</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see garboard.quantity.Ratio
	 * @see garboard.model.impl.GarboardPackageImpl#getRatio()
	 * @generated
	 */
	int RATIO = 133;

	/**
	 * The meta object id for the '<em>Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see garboard.model.impl.GarboardPackageImpl#getDate()
	 * @generated
	 */
	int DATE = 134;

	/**
	 * The meta object id for the '<em>Date Time</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.OffsetDateTime
	 * @see garboard.model.impl.GarboardPackageImpl#getDateTime()
	 * @generated
	 */
	int DATE_TIME = 135;

	/**
	 * The meta object id for the '<em>Text</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.lang.String
	 * @see garboard.model.impl.GarboardPackageImpl#getText()
	 * @generated
	 */
	int TEXT = 136;


	/**
	 * Returns the meta object for class '{@link garboard.model.Item <em>Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Item</em>'.
	 * @see garboard.model.Item
	 * @generated
	 */
	EClass getItem();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Item#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see garboard.model.Item#getId()
	 * @see #getItem()
	 * @generated
	 */
	EAttribute getItem_Id();

	/**
	 * Returns the meta object for class '{@link garboard.model.Point <em>Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Point</em>'.
	 * @see garboard.model.Point
	 * @generated
	 */
	EClass getPoint();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Point#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see garboard.model.Point#getX()
	 * @see #getPoint()
	 * @generated
	 */
	EAttribute getPoint_X();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Point#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see garboard.model.Point#getY()
	 * @see #getPoint()
	 * @generated
	 */
	EAttribute getPoint_Y();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Point#getZ <em>Z</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Z</em>'.
	 * @see garboard.model.Point#getZ()
	 * @see #getPoint()
	 * @generated
	 */
	EAttribute getPoint_Z();

	/**
	 * Returns the meta object for class '{@link garboard.model.CommissioningRecord <em>Commissioning Record</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Commissioning Record</em>'.
	 * @see garboard.model.CommissioningRecord
	 * @generated
	 */
	EClass getCommissioningRecord();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CommissioningRecord#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see garboard.model.CommissioningRecord#getFormatVersion()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EAttribute getCommissioningRecord_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CommissioningRecord#getRecordNumber <em>Record Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Record Number</em>'.
	 * @see garboard.model.CommissioningRecord#getRecordNumber()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EAttribute getCommissioningRecord_RecordNumber();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CommissioningRecord#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see garboard.model.CommissioningRecord#getTitle()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EAttribute getCommissioningRecord_Title();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CommissioningRecord#getCreatedOn <em>Created On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Created On</em>'.
	 * @see garboard.model.CommissioningRecord#getCreatedOn()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EAttribute getCommissioningRecord_CreatedOn();

	/**
	 * Returns the meta object for the attribute list '{@link garboard.model.CommissioningRecord#getPractices <em>Practices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Practices</em>'.
	 * @see garboard.model.CommissioningRecord#getPractices()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EAttribute getCommissioningRecord_Practices();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CommissioningRecord#getRemarks <em>Remarks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remarks</em>'.
	 * @see garboard.model.CommissioningRecord#getRemarks()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EAttribute getCommissioningRecord_Remarks();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getInstruments <em>Instruments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Instruments</em>'.
	 * @see garboard.model.CommissioningRecord#getInstruments()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Instruments();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getParties <em>Parties</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Parties</em>'.
	 * @see garboard.model.CommissioningRecord#getParties()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Parties();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getVessel <em>Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Vessel</em>'.
	 * @see garboard.model.CommissioningRecord#getVessel()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Vessel();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getGeneratorSet <em>Generator Set</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Generator Set</em>'.
	 * @see garboard.model.CommissioningRecord#getGeneratorSet()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_GeneratorSet();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getStartingBattery <em>Starting Battery</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Starting Battery</em>'.
	 * @see garboard.model.CommissioningRecord#getStartingBattery()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_StartingBattery();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getFuelSupply <em>Fuel Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Fuel Supply</em>'.
	 * @see garboard.model.CommissioningRecord#getFuelSupply()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_FuelSupply();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getRawWater <em>Raw Water</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Raw Water</em>'.
	 * @see garboard.model.CommissioningRecord#getRawWater()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_RawWater();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getExhaust <em>Exhaust</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Exhaust</em>'.
	 * @see garboard.model.CommissioningRecord#getExhaust()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Exhaust();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getVentilation <em>Ventilation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Ventilation</em>'.
	 * @see garboard.model.CommissioningRecord#getVentilation()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Ventilation();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getMounting <em>Mounting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Mounting</em>'.
	 * @see garboard.model.CommissioningRecord#getMounting()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Mounting();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getAcOutput <em>Ac Output</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Ac Output</em>'.
	 * @see garboard.model.CommissioningRecord#getAcOutput()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_AcOutput();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getAlarms <em>Alarms</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Alarms</em>'.
	 * @see garboard.model.CommissioningRecord#getAlarms()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Alarms();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getInspections <em>Inspections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inspections</em>'.
	 * @see garboard.model.CommissioningRecord#getInspections()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Inspections();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getTrial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Trial</em>'.
	 * @see garboard.model.CommissioningRecord#getTrial()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Trial();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.CommissioningRecord#getUpkeep <em>Upkeep</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Upkeep</em>'.
	 * @see garboard.model.CommissioningRecord#getUpkeep()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Upkeep();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getAcceptances <em>Acceptances</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Acceptances</em>'.
	 * @see garboard.model.CommissioningRecord#getAcceptances()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Acceptances();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getSignatures <em>Signatures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Signatures</em>'.
	 * @see garboard.model.CommissioningRecord#getSignatures()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Signatures();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getPhotographs <em>Photographs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Photographs</em>'.
	 * @see garboard.model.CommissioningRecord#getPhotographs()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Photographs();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getRevisions <em>Revisions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Revisions</em>'.
	 * @see garboard.model.CommissioningRecord#getRevisions()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_Revisions();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.CommissioningRecord#getUnreadEntries <em>Unread Entries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Unread Entries</em>'.
	 * @see garboard.model.CommissioningRecord#getUnreadEntries()
	 * @see #getCommissioningRecord()
	 * @generated
	 */
	EReference getCommissioningRecord_UnreadEntries();

	/**
	 * Returns the meta object for class '{@link garboard.model.Revision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Revision</em>'.
	 * @see garboard.model.Revision
	 * @generated
	 */
	EClass getRevision();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Revision#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see garboard.model.Revision#getNumber()
	 * @see #getRevision()
	 * @generated
	 */
	EAttribute getRevision_Number();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Revision#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see garboard.model.Revision#getDate()
	 * @see #getRevision()
	 * @generated
	 */
	EAttribute getRevision_Date();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Revision#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see garboard.model.Revision#getBy()
	 * @see #getRevision()
	 * @generated
	 */
	EAttribute getRevision_By();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Revision#getDescription <em>Description</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Description</em>'.
	 * @see garboard.model.Revision#getDescription()
	 * @see #getRevision()
	 * @generated
	 */
	EAttribute getRevision_Description();

	/**
	 * Returns the meta object for class '{@link garboard.model.Instrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Instrument</em>'.
	 * @see garboard.model.Instrument
	 * @generated
	 */
	EClass getInstrument();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Instrument#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.Instrument#getName()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Instrument#getSerialNumber <em>Serial Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Serial Number</em>'.
	 * @see garboard.model.Instrument#getSerialNumber()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_SerialNumber();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Instrument#getMeasures <em>Measures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measures</em>'.
	 * @see garboard.model.Instrument#getMeasures()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Measures();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Instrument#getAccuracyStated <em>Accuracy Stated</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Accuracy Stated</em>'.
	 * @see garboard.model.Instrument#getAccuracyStated()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_AccuracyStated();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Instrument#getCalibratedOn <em>Calibrated On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calibrated On</em>'.
	 * @see garboard.model.Instrument#getCalibratedOn()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_CalibratedOn();

	/**
	 * Returns the meta object for class '{@link garboard.model.Party <em>Party</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Party</em>'.
	 * @see garboard.model.Party
	 * @generated
	 */
	EClass getParty();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Party#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see garboard.model.Party#getRole()
	 * @see #getParty()
	 * @generated
	 */
	EAttribute getParty_Role();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Party#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.Party#getName()
	 * @see #getParty()
	 * @generated
	 */
	EAttribute getParty_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Party#getOrganisation <em>Organisation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Organisation</em>'.
	 * @see garboard.model.Party#getOrganisation()
	 * @see #getParty()
	 * @generated
	 */
	EAttribute getParty_Organisation();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Party#getLicence <em>Licence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Licence</em>'.
	 * @see garboard.model.Party#getLicence()
	 * @see #getParty()
	 * @generated
	 */
	EAttribute getParty_Licence();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Party#getContact <em>Contact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact</em>'.
	 * @see garboard.model.Party#getContact()
	 * @see #getParty()
	 * @generated
	 */
	EAttribute getParty_Contact();

	/**
	 * Returns the meta object for class '{@link garboard.model.Photograph <em>Photograph</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Photograph</em>'.
	 * @see garboard.model.Photograph
	 * @generated
	 */
	EClass getPhotograph();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Photograph#getCaption <em>Caption</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Caption</em>'.
	 * @see garboard.model.Photograph#getCaption()
	 * @see #getPhotograph()
	 * @generated
	 */
	EAttribute getPhotograph_Caption();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Photograph#getTakenOn <em>Taken On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Taken On</em>'.
	 * @see garboard.model.Photograph#getTakenOn()
	 * @see #getPhotograph()
	 * @generated
	 */
	EAttribute getPhotograph_TakenOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Photograph#getMediaType <em>Media Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Media Type</em>'.
	 * @see garboard.model.Photograph#getMediaType()
	 * @see #getPhotograph()
	 * @generated
	 */
	EAttribute getPhotograph_MediaType();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Photograph#getData <em>Data</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Data</em>'.
	 * @see garboard.model.Photograph#getData()
	 * @see #getPhotograph()
	 * @generated
	 */
	EAttribute getPhotograph_Data();

	/**
	 * Returns the meta object for class '{@link garboard.model.Vessel <em>Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Vessel</em>'.
	 * @see garboard.model.Vessel
	 * @generated
	 */
	EClass getVessel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.Vessel#getName()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getIdentification <em>Identification</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Identification</em>'.
	 * @see garboard.model.Vessel#getIdentification()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Identification();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getFlag <em>Flag</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flag</em>'.
	 * @see garboard.model.Vessel#getFlag()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Flag();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getHullKind <em>Hull Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hull Kind</em>'.
	 * @see garboard.model.Vessel#getHullKind()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_HullKind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getHullMaterial <em>Hull Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hull Material</em>'.
	 * @see garboard.model.Vessel#getHullMaterial()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_HullMaterial();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getService <em>Service</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Service</em>'.
	 * @see garboard.model.Vessel#getService()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Service();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getBuiltOn <em>Built On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Built On</em>'.
	 * @see garboard.model.Vessel#getBuiltOn()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_BuiltOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getLengthOverall <em>Length Overall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length Overall</em>'.
	 * @see garboard.model.Vessel#getLengthOverall()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_LengthOverall();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getWaterlineLength <em>Waterline Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Waterline Length</em>'.
	 * @see garboard.model.Vessel#getWaterlineLength()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_WaterlineLength();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getBeam <em>Beam</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Beam</em>'.
	 * @see garboard.model.Vessel#getBeam()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Beam();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getDraught <em>Draught</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Draught</em>'.
	 * @see garboard.model.Vessel#getDraught()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Draught();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getFreeboardAmidships <em>Freeboard Amidships</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Freeboard Amidships</em>'.
	 * @see garboard.model.Vessel#getFreeboardAmidships()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_FreeboardAmidships();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getPassengers <em>Passengers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Passengers</em>'.
	 * @see garboard.model.Vessel#getPassengers()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Passengers();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getOvernightPassengers <em>Overnight Passengers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overnight Passengers</em>'.
	 * @see garboard.model.Vessel#getOvernightPassengers()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_OvernightPassengers();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getSpeed <em>Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Speed</em>'.
	 * @see garboard.model.Vessel#getSpeed()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Speed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getDesignHeel <em>Design Heel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Heel</em>'.
	 * @see garboard.model.Vessel#getDesignHeel()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_DesignHeel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getDesignRoll <em>Design Roll</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Roll</em>'.
	 * @see garboard.model.Vessel#getDesignRoll()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_DesignRoll();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getDesignTrim <em>Design Trim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Trim</em>'.
	 * @see garboard.model.Vessel#getDesignTrim()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_DesignTrim();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getSinkage <em>Sinkage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sinkage</em>'.
	 * @see garboard.model.Vessel#getSinkage()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_Sinkage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getGasolineEngineAboard <em>Gasoline Engine Aboard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gasoline Engine Aboard</em>'.
	 * @see garboard.model.Vessel#getGasolineEngineAboard()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_GasolineEngineAboard();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Vessel#getGasolineEngines <em>Gasoline Engines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gasoline Engines</em>'.
	 * @see garboard.model.Vessel#getGasolineEngines()
	 * @see #getVessel()
	 * @generated
	 */
	EAttribute getVessel_GasolineEngines();

	/**
	 * Returns the meta object for class '{@link garboard.model.GeneratorSet <em>Generator Set</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Generator Set</em>'.
	 * @see garboard.model.GeneratorSet
	 * @generated
	 */
	EClass getGeneratorSet();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getMaker <em>Maker</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maker</em>'.
	 * @see garboard.model.GeneratorSet#getMaker()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Maker();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see garboard.model.GeneratorSet#getType()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Type();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getSerialNumber <em>Serial Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Serial Number</em>'.
	 * @see garboard.model.GeneratorSet#getSerialNumber()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_SerialNumber();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getEngineSerialNumber <em>Engine Serial Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Engine Serial Number</em>'.
	 * @see garboard.model.GeneratorSet#getEngineSerialNumber()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_EngineSerialNumber();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getAlternatorSerialNumber <em>Alternator Serial Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Alternator Serial Number</em>'.
	 * @see garboard.model.GeneratorSet#getAlternatorSerialNumber()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_AlternatorSerialNumber();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getSoldOn <em>Sold On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sold On</em>'.
	 * @see garboard.model.GeneratorSet#getSoldOn()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_SoldOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getInstalledOn <em>Installed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed On</em>'.
	 * @see garboard.model.GeneratorSet#getInstalledOn()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_InstalledOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getHourMeter <em>Hour Meter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hour Meter</em>'.
	 * @see garboard.model.GeneratorSet#getHourMeter()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_HourMeter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getFuel <em>Fuel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fuel</em>'.
	 * @see garboard.model.GeneratorSet#getFuel()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Fuel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getFuelSystem <em>Fuel System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fuel System</em>'.
	 * @see garboard.model.GeneratorSet#getFuelSystem()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_FuelSystem();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getAspiration <em>Aspiration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Aspiration</em>'.
	 * @see garboard.model.GeneratorSet#getAspiration()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Aspiration();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getCooling <em>Cooling</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cooling</em>'.
	 * @see garboard.model.GeneratorSet#getCooling()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Cooling();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getDutyRating <em>Duty Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Duty Rating</em>'.
	 * @see garboard.model.GeneratorSet#getDutyRating()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_DutyRating();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRatedPower <em>Rated Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Power</em>'.
	 * @see garboard.model.GeneratorSet#getRatedPower()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RatedPower();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRatedApparentPower <em>Rated Apparent Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Apparent Power</em>'.
	 * @see garboard.model.GeneratorSet#getRatedApparentPower()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RatedApparentPower();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRatedPowerFactor <em>Rated Power Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Power Factor</em>'.
	 * @see garboard.model.GeneratorSet#getRatedPowerFactor()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RatedPowerFactor();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRatedVoltage <em>Rated Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Voltage</em>'.
	 * @see garboard.model.GeneratorSet#getRatedVoltage()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RatedVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRatedFrequency <em>Rated Frequency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Frequency</em>'.
	 * @see garboard.model.GeneratorSet#getRatedFrequency()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RatedFrequency();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getPhases <em>Phases</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Phases</em>'.
	 * @see garboard.model.GeneratorSet#getPhases()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Phases();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRatedSpeed <em>Rated Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Speed</em>'.
	 * @see garboard.model.GeneratorSet#getRatedSpeed()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RatedSpeed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getPoles <em>Poles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Poles</em>'.
	 * @see garboard.model.GeneratorSet#getPoles()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_Poles();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getCrankingSpeed <em>Cranking Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cranking Speed</em>'.
	 * @see garboard.model.GeneratorSet#getCrankingSpeed()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_CrankingSpeed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getShaftPower <em>Shaft Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shaft Power</em>'.
	 * @see garboard.model.GeneratorSet#getShaftPower()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_ShaftPower();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getAlternatorEfficiency <em>Alternator Efficiency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Alternator Efficiency</em>'.
	 * @see garboard.model.GeneratorSet#getAlternatorEfficiency()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_AlternatorEfficiency();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getFuelConsumptionFullLoad <em>Fuel Consumption Full Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fuel Consumption Full Load</em>'.
	 * @see garboard.model.GeneratorSet#getFuelConsumptionFullLoad()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_FuelConsumptionFullLoad();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getSpecificFuelConsumption <em>Specific Fuel Consumption</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specific Fuel Consumption</em>'.
	 * @see garboard.model.GeneratorSet#getSpecificFuelConsumption()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_SpecificFuelConsumption();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getAirFuelRatio <em>Air Fuel Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Air Fuel Ratio</em>'.
	 * @see garboard.model.GeneratorSet#getAirFuelRatio()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_AirFuelRatio();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getExhaustGasTemperature <em>Exhaust Gas Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exhaust Gas Temperature</em>'.
	 * @see garboard.model.GeneratorSet#getExhaustGasTemperature()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_ExhaustGasTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getExhaustMassFlow <em>Exhaust Mass Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exhaust Mass Flow</em>'.
	 * @see garboard.model.GeneratorSet#getExhaustMassFlow()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_ExhaustMassFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getHeatToCoolant <em>Heat To Coolant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heat To Coolant</em>'.
	 * @see garboard.model.GeneratorSet#getHeatToCoolant()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_HeatToCoolant();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getHeatToCompartment <em>Heat To Compartment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heat To Compartment</em>'.
	 * @see garboard.model.GeneratorSet#getHeatToCompartment()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_HeatToCompartment();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getCombustionAirFlow <em>Combustion Air Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Combustion Air Flow</em>'.
	 * @see garboard.model.GeneratorSet#getCombustionAirFlow()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_CombustionAirFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getRawWaterFlow <em>Raw Water Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Raw Water Flow</em>'.
	 * @see garboard.model.GeneratorSet#getRawWaterFlow()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_RawWaterFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getSystemVoltage <em>System Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>System Voltage</em>'.
	 * @see garboard.model.GeneratorSet#getSystemVoltage()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_SystemVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getCrankingCurrent <em>Cranking Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cranking Current</em>'.
	 * @see garboard.model.GeneratorSet#getCrankingCurrent()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_CrankingCurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getStarterVoltage <em>Starter Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Starter Voltage</em>'.
	 * @see garboard.model.GeneratorSet#getStarterVoltage()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_StarterVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getInSoundShield <em>In Sound Shield</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Sound Shield</em>'.
	 * @see garboard.model.GeneratorSet#getInSoundShield()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_InSoundShield();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getOverloadDeclared <em>Overload Declared</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overload Declared</em>'.
	 * @see garboard.model.GeneratorSet#getOverloadDeclared()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_OverloadDeclared();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getEmissionLabelMarine <em>Emission Label Marine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Emission Label Marine</em>'.
	 * @see garboard.model.GeneratorSet#getEmissionLabelMarine()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_EmissionLabelMarine();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getPerformanceClass <em>Performance Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Performance Class</em>'.
	 * @see garboard.model.GeneratorSet#getPerformanceClass()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_PerformanceClass();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getDesignAmbient <em>Design Ambient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Ambient</em>'.
	 * @see garboard.model.GeneratorSet#getDesignAmbient()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_DesignAmbient();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getSubtransientReactance <em>Subtransient Reactance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Subtransient Reactance</em>'.
	 * @see garboard.model.GeneratorSet#getSubtransientReactance()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_SubtransientReactance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getTransientReactance <em>Transient Reactance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Transient Reactance</em>'.
	 * @see garboard.model.GeneratorSet#getTransientReactance()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_TransientReactance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getSustainedShortCircuitMultiple <em>Sustained Short Circuit Multiple</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sustained Short Circuit Multiple</em>'.
	 * @see garboard.model.GeneratorSet#getSustainedShortCircuitMultiple()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_SustainedShortCircuitMultiple();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getAnnualHours <em>Annual Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Annual Hours</em>'.
	 * @see garboard.model.GeneratorSet#getAnnualHours()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_AnnualHours();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.GeneratorSet#getPlateShowsDeratedPower <em>Plate Shows Derated Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plate Shows Derated Power</em>'.
	 * @see garboard.model.GeneratorSet#getPlateShowsDeratedPower()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EAttribute getGeneratorSet_PlateShowsDeratedPower();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.GeneratorSet#getMakerLimits <em>Maker Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Maker Limits</em>'.
	 * @see garboard.model.GeneratorSet#getMakerLimits()
	 * @see #getGeneratorSet()
	 * @generated
	 */
	EReference getGeneratorSet_MakerLimits();

	/**
	 * Returns the meta object for class '{@link garboard.model.MakerLimits <em>Maker Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Maker Limits</em>'.
	 * @see garboard.model.MakerLimits
	 * @generated
	 */
	EClass getMakerLimits();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getDocument <em>Document</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Document</em>'.
	 * @see garboard.model.MakerLimits#getDocument()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_Document();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getDocumentPage <em>Document Page</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Document Page</em>'.
	 * @see garboard.model.MakerLimits#getDocumentPage()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_DocumentPage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumBackPressure <em>Maximum Back Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Back Pressure</em>'.
	 * @see garboard.model.MakerLimits#getMaximumBackPressure()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumBackPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumLiftHeight <em>Maximum Lift Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Lift Height</em>'.
	 * @see garboard.model.MakerLimits#getMaximumLiftHeight()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumLiftHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumSiphonBreakHeight <em>Minimum Siphon Break Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Siphon Break Height</em>'.
	 * @see garboard.model.MakerLimits#getMinimumSiphonBreakHeight()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumSiphonBreakHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumSiphonClearanceHeeled <em>Minimum Siphon Clearance Heeled</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Siphon Clearance Heeled</em>'.
	 * @see garboard.model.MakerLimits#getMinimumSiphonClearanceHeeled()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumSiphonClearanceHeeled();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getSiphonBreakNeededBelow <em>Siphon Break Needed Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Siphon Break Needed Below</em>'.
	 * @see garboard.model.MakerLimits#getSiphonBreakNeededBelow()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_SiphonBreakNeededBelow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumInjectionDrop <em>Minimum Injection Drop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Injection Drop</em>'.
	 * @see garboard.model.MakerLimits#getMinimumInjectionDrop()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumInjectionDrop();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumExhaustFall <em>Minimum Exhaust Fall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Exhaust Fall</em>'.
	 * @see garboard.model.MakerLimits#getMinimumExhaustFall()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumExhaustFall();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumExhaustBore <em>Minimum Exhaust Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Exhaust Bore</em>'.
	 * @see garboard.model.MakerLimits#getMinimumExhaustBore()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumExhaustBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumExhaustLength <em>Maximum Exhaust Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Exhaust Length</em>'.
	 * @see garboard.model.MakerLimits#getMaximumExhaustLength()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumExhaustLength();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumMufflerVolume <em>Minimum Muffler Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Muffler Volume</em>'.
	 * @see garboard.model.MakerLimits#getMinimumMufflerVolume()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumMufflerVolume();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumRawWaterFlow <em>Minimum Raw Water Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Raw Water Flow</em>'.
	 * @see garboard.model.MakerLimits#getMinimumRawWaterFlow()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumRawWaterFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumRawWaterSuctionHead <em>Maximum Raw Water Suction Head</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Raw Water Suction Head</em>'.
	 * @see garboard.model.MakerLimits#getMaximumRawWaterSuctionHead()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumRawWaterSuctionHead();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumRawWaterVacuum <em>Maximum Raw Water Vacuum</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Raw Water Vacuum</em>'.
	 * @see garboard.model.MakerLimits#getMaximumRawWaterVacuum()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumRawWaterVacuum();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumRawWaterInletPressure <em>Maximum Raw Water Inlet Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Raw Water Inlet Pressure</em>'.
	 * @see garboard.model.MakerLimits#getMaximumRawWaterInletPressure()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumRawWaterInletPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumRawWaterHoseBore <em>Minimum Raw Water Hose Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Raw Water Hose Bore</em>'.
	 * @see garboard.model.MakerLimits#getMinimumRawWaterHoseBore()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumRawWaterHoseBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumFuelLift <em>Maximum Fuel Lift</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Fuel Lift</em>'.
	 * @see garboard.model.MakerLimits#getMaximumFuelLift()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumFuelLift();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumFuelVacuum <em>Maximum Fuel Vacuum</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Fuel Vacuum</em>'.
	 * @see garboard.model.MakerLimits#getMaximumFuelVacuum()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumFuelVacuum();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumFuelLineBore <em>Minimum Fuel Line Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Fuel Line Bore</em>'.
	 * @see garboard.model.MakerLimits#getMinimumFuelLineBore()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumFuelLineBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getRequiredSeparatorFlow <em>Required Separator Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Required Separator Flow</em>'.
	 * @see garboard.model.MakerLimits#getRequiredSeparatorFlow()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_RequiredSeparatorFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getFilterFineness <em>Filter Fineness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Filter Fineness</em>'.
	 * @see garboard.model.MakerLimits#getFilterFineness()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_FilterFineness();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumBatteryCcA <em>Minimum Battery Cc A</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Battery Cc A</em>'.
	 * @see garboard.model.MakerLimits#getMinimumBatteryCcA()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumBatteryCcA();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumBatteryCapacity <em>Minimum Battery Capacity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Battery Capacity</em>'.
	 * @see garboard.model.MakerLimits#getMinimumBatteryCapacity()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumBatteryCapacity();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getBatteryCrankingDefinition <em>Battery Cranking Definition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Battery Cranking Definition</em>'.
	 * @see garboard.model.MakerLimits#getBatteryCrankingDefinition()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_BatteryCrankingDefinition();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumCrankingCircuitResistance <em>Maximum Cranking Circuit Resistance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Cranking Circuit Resistance</em>'.
	 * @see garboard.model.MakerLimits#getMaximumCrankingCircuitResistance()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumCrankingCircuitResistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumCrankingVoltage <em>Minimum Cranking Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Cranking Voltage</em>'.
	 * @see garboard.model.MakerLimits#getMinimumCrankingVoltage()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumCrankingVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getFeedPressureLow <em>Feed Pressure Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feed Pressure Low</em>'.
	 * @see garboard.model.MakerLimits#getFeedPressureLow()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_FeedPressureLow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getFeedPressureHigh <em>Feed Pressure High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feed Pressure High</em>'.
	 * @see garboard.model.MakerLimits#getFeedPressureHigh()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_FeedPressureHigh();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getRailPressureLow <em>Rail Pressure Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail Pressure Low</em>'.
	 * @see garboard.model.MakerLimits#getRailPressureLow()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_RailPressureLow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getRailPressureHigh <em>Rail Pressure High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail Pressure High</em>'.
	 * @see garboard.model.MakerLimits#getRailPressureHigh()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_RailPressureHigh();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumCrankTime <em>Maximum Crank Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Crank Time</em>'.
	 * @see garboard.model.MakerLimits#getMaximumCrankTime()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumCrankTime();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumTotalCrankTime <em>Maximum Total Crank Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Total Crank Time</em>'.
	 * @see garboard.model.MakerLimits#getMaximumTotalCrankTime()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumTotalCrankTime();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumCompartmentTemperature <em>Maximum Compartment Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Compartment Temperature</em>'.
	 * @see garboard.model.MakerLimits#getMaximumCompartmentTemperature()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumCompartmentTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumCompartmentRise <em>Maximum Compartment Rise</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Compartment Rise</em>'.
	 * @see garboard.model.MakerLimits#getMaximumCompartmentRise()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumCompartmentRise();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumDepression <em>Maximum Depression</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Depression</em>'.
	 * @see garboard.model.MakerLimits#getMaximumDepression()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumDepression();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumHeel <em>Maximum Heel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Heel</em>'.
	 * @see garboard.model.MakerLimits#getMaximumHeel()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumHeel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumTrim <em>Maximum Trim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Trim</em>'.
	 * @see garboard.model.MakerLimits#getMaximumTrim()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumTrim();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumCoolantTemperature <em>Maximum Coolant Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Coolant Temperature</em>'.
	 * @see garboard.model.MakerLimits#getMaximumCoolantTemperature()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumCoolantTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumOilPressure <em>Minimum Oil Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Oil Pressure</em>'.
	 * @see garboard.model.MakerLimits#getMinimumOilPressure()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumOilPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMaximumExhaustTemperature <em>Maximum Exhaust Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Exhaust Temperature</em>'.
	 * @see garboard.model.MakerLimits#getMaximumExhaustTemperature()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MaximumExhaustTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.MakerLimits#getMinimumVentilationArea <em>Minimum Ventilation Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Ventilation Area</em>'.
	 * @see garboard.model.MakerLimits#getMinimumVentilationArea()
	 * @see #getMakerLimits()
	 * @generated
	 */
	EAttribute getMakerLimits_MinimumVentilationArea();

	/**
	 * Returns the meta object for class '{@link garboard.model.StartingBattery <em>Starting Battery</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Starting Battery</em>'.
	 * @see garboard.model.StartingBattery
	 * @generated
	 */
	EClass getStartingBattery();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getChemistry <em>Chemistry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chemistry</em>'.
	 * @see garboard.model.StartingBattery#getChemistry()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_Chemistry();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBlockVoltage <em>Block Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Block Voltage</em>'.
	 * @see garboard.model.StartingBattery#getBlockVoltage()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BlockVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBlocksInSeries <em>Blocks In Series</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blocks In Series</em>'.
	 * @see garboard.model.StartingBattery#getBlocksInSeries()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BlocksInSeries();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getStringsInParallel <em>Strings In Parallel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strings In Parallel</em>'.
	 * @see garboard.model.StartingBattery#getStringsInParallel()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_StringsInParallel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBlockCapacity <em>Block Capacity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Block Capacity</em>'.
	 * @see garboard.model.StartingBattery#getBlockCapacity()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BlockCapacity();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBlockCrankingRating <em>Block Cranking Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Block Cranking Rating</em>'.
	 * @see garboard.model.StartingBattery#getBlockCrankingRating()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BlockCrankingRating();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getCrankingRatingDefinition <em>Cranking Rating Definition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cranking Rating Definition</em>'.
	 * @see garboard.model.StartingBattery#getCrankingRatingDefinition()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_CrankingRatingDefinition();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getInstalledOn <em>Installed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed On</em>'.
	 * @see garboard.model.StartingBattery#getInstalledOn()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_InstalledOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBlockMass <em>Block Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Block Mass</em>'.
	 * @see garboard.model.StartingBattery#getBlockMass()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BlockMass();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBatteryTemperature <em>Battery Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Battery Temperature</em>'.
	 * @see garboard.model.StartingBattery#getBatteryTemperature()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BatteryTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getRestTime <em>Rest Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rest Time</em>'.
	 * @see garboard.model.StartingBattery#getRestTime()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_RestTime();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getRestedVoltage <em>Rested Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rested Voltage</em>'.
	 * @see garboard.model.StartingBattery#getRestedVoltage()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_RestedVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getColdestStart <em>Coldest Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coldest Start</em>'.
	 * @see garboard.model.StartingBattery#getColdestStart()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_ColdestStart();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.StartingBattery#getBlocks <em>Blocks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Blocks</em>'.
	 * @see garboard.model.StartingBattery#getBlocks()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EReference getStartingBattery_Blocks();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getDedicatedToGenerator <em>Dedicated To Generator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dedicated To Generator</em>'.
	 * @see garboard.model.StartingBattery#getDedicatedToGenerator()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_DedicatedToGenerator();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getIsolatingSwitch <em>Isolating Switch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Isolating Switch</em>'.
	 * @see garboard.model.StartingBattery#getIsolatingSwitch()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_IsolatingSwitch();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getIsolatingSwitchReachable <em>Isolating Switch Reachable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Isolating Switch Reachable</em>'.
	 * @see garboard.model.StartingBattery#getIsolatingSwitchReachable()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_IsolatingSwitchReachable();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getEmergencyCrossConnect <em>Emergency Cross Connect</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Emergency Cross Connect</em>'.
	 * @see garboard.model.StartingBattery#getEmergencyCrossConnect()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_EmergencyCrossConnect();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getSecured <em>Secured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Secured</em>'.
	 * @see garboard.model.StartingBattery#getSecured()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_Secured();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getMovementUnderTest <em>Movement Under Test</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Movement Under Test</em>'.
	 * @see garboard.model.StartingBattery#getMovementUnderTest()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_MovementUnderTest();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getTrayOrBox <em>Tray Or Box</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tray Or Box</em>'.
	 * @see garboard.model.StartingBattery#getTrayOrBox()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_TrayOrBox();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getPositiveTerminalCovered <em>Positive Terminal Covered</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Positive Terminal Covered</em>'.
	 * @see garboard.model.StartingBattery#getPositiveTerminalCovered()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_PositiveTerminalCovered();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getTerminals <em>Terminals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Terminals</em>'.
	 * @see garboard.model.StartingBattery#getTerminals()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_Terminals();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getVentedOverboard <em>Vented Overboard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vented Overboard</em>'.
	 * @see garboard.model.StartingBattery#getVentedOverboard()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_VentedOverboard();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getVentilationAreaEachWay <em>Ventilation Area Each Way</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ventilation Area Each Way</em>'.
	 * @see garboard.model.StartingBattery#getVentilationAreaEachWay()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_VentilationAreaEachWay();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getDistanceToStarter <em>Distance To Starter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance To Starter</em>'.
	 * @see garboard.model.StartingBattery#getDistanceToStarter()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_DistanceToStarter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getFuelPartsWithinReach <em>Fuel Parts Within Reach</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fuel Parts Within Reach</em>'.
	 * @see garboard.model.StartingBattery#getFuelPartsWithinReach()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_FuelPartsWithinReach();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getDielectricShield <em>Dielectric Shield</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dielectric Shield</em>'.
	 * @see garboard.model.StartingBattery#getDielectricShield()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_DielectricShield();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getAboveOrBelowFuelFittings <em>Above Or Below Fuel Fittings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Above Or Below Fuel Fittings</em>'.
	 * @see garboard.model.StartingBattery#getAboveOrBelowFuelFittings()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_AboveOrBelowFuelFittings();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getHighAboveBilge <em>High Above Bilge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High Above Bilge</em>'.
	 * @see garboard.model.StartingBattery#getHighAboveBilge()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_HighAboveBilge();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getChargerRatedCurrent <em>Charger Rated Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Charger Rated Current</em>'.
	 * @see garboard.model.StartingBattery#getChargerRatedCurrent()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_ChargerRatedCurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getChargerVoltage <em>Charger Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Charger Voltage</em>'.
	 * @see garboard.model.StartingBattery#getChargerVoltage()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_ChargerVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getChargingVoltageRunning <em>Charging Voltage Running</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Charging Voltage Running</em>'.
	 * @see garboard.model.StartingBattery#getChargingVoltageRunning()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_ChargingVoltageRunning();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getChargerAmmeter <em>Charger Ammeter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Charger Ammeter</em>'.
	 * @see garboard.model.StartingBattery#getChargerAmmeter()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_ChargerAmmeter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getSameTypeAndAge <em>Same Type And Age</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Same Type And Age</em>'.
	 * @see garboard.model.StartingBattery#getSameTypeAndAge()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_SameTypeAndAge();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.StartingBattery#getCables <em>Cables</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Cables</em>'.
	 * @see garboard.model.StartingBattery#getCables()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EReference getStartingBattery_Cables();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getCrankingVoltageAtPosts <em>Cranking Voltage At Posts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cranking Voltage At Posts</em>'.
	 * @see garboard.model.StartingBattery#getCrankingVoltageAtPosts()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_CrankingVoltageAtPosts();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getCrankingVoltageAtStarter <em>Cranking Voltage At Starter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cranking Voltage At Starter</em>'.
	 * @see garboard.model.StartingBattery#getCrankingVoltageAtStarter()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_CrankingVoltageAtStarter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getBlocksMixed <em>Blocks Mixed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blocks Mixed</em>'.
	 * @see garboard.model.StartingBattery#getBlocksMixed()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_BlocksMixed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StartingBattery#getEmergencySource <em>Emergency Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Emergency Source</em>'.
	 * @see garboard.model.StartingBattery#getEmergencySource()
	 * @see #getStartingBattery()
	 * @generated
	 */
	EAttribute getStartingBattery_EmergencySource();

	/**
	 * Returns the meta object for class '{@link garboard.model.BatteryBlock <em>Battery Block</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Battery Block</em>'.
	 * @see garboard.model.BatteryBlock
	 * @generated
	 */
	EClass getBatteryBlock();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.BatteryBlock#getLabel <em>Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label</em>'.
	 * @see garboard.model.BatteryBlock#getLabel()
	 * @see #getBatteryBlock()
	 * @generated
	 */
	EAttribute getBatteryBlock_Label();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.BatteryBlock#getRestedVoltage <em>Rested Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rested Voltage</em>'.
	 * @see garboard.model.BatteryBlock#getRestedVoltage()
	 * @see #getBatteryBlock()
	 * @generated
	 */
	EAttribute getBatteryBlock_RestedVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.BatteryBlock#getSpecificGravityLow <em>Specific Gravity Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specific Gravity Low</em>'.
	 * @see garboard.model.BatteryBlock#getSpecificGravityLow()
	 * @see #getBatteryBlock()
	 * @generated
	 */
	EAttribute getBatteryBlock_SpecificGravityLow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.BatteryBlock#getSpecificGravityHigh <em>Specific Gravity High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specific Gravity High</em>'.
	 * @see garboard.model.BatteryBlock#getSpecificGravityHigh()
	 * @see #getBatteryBlock()
	 * @generated
	 */
	EAttribute getBatteryBlock_SpecificGravityHigh();

	/**
	 * Returns the meta object for class '{@link garboard.model.CableRun <em>Cable Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cable Run</em>'.
	 * @see garboard.model.CableRun
	 * @generated
	 */
	EClass getCableRun();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.CableRun#getName()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getFunction <em>Function</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Function</em>'.
	 * @see garboard.model.CableRun#getFunction()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Function();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getConductorSize <em>Conductor Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conductor Size</em>'.
	 * @see garboard.model.CableRun#getConductorSize()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ConductorSize();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getStrandClass <em>Strand Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strand Class</em>'.
	 * @see garboard.model.CableRun#getStrandClass()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_StrandClass();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getInsulation <em>Insulation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Insulation</em>'.
	 * @see garboard.model.CableRun#getInsulation()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Insulation();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see garboard.model.CableRun#getLength()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Length();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getCurrent <em>Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current</em>'.
	 * @see garboard.model.CableRun#getCurrent()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Current();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getSystemVoltage <em>System Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>System Voltage</em>'.
	 * @see garboard.model.CableRun#getSystemVoltage()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_SystemVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getCritical <em>Critical</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Critical</em>'.
	 * @see garboard.model.CableRun#getCritical()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Critical();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getInEngineSpace <em>In Engine Space</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Engine Space</em>'.
	 * @see garboard.model.CableRun#getInEngineSpace()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_InEngineSpace();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getConductorsInBundle <em>Conductors In Bundle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conductors In Bundle</em>'.
	 * @see garboard.model.CableRun#getConductorsInBundle()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ConductorsInBundle();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getConductorTemperature <em>Conductor Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conductor Temperature</em>'.
	 * @see garboard.model.CableRun#getConductorTemperature()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ConductorTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getProtection <em>Protection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection</em>'.
	 * @see garboard.model.CableRun#getProtection()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_Protection();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getProtectionRating <em>Protection Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Rating</em>'.
	 * @see garboard.model.CableRun#getProtectionRating()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ProtectionRating();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getProtectionVoltageRating <em>Protection Voltage Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Voltage Rating</em>'.
	 * @see garboard.model.CableRun#getProtectionVoltageRating()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ProtectionVoltageRating();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getProtectionDistanceFromSource <em>Protection Distance From Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Distance From Source</em>'.
	 * @see garboard.model.CableRun#getProtectionDistanceFromSource()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ProtectionDistanceFromSource();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getSheathedToProtection <em>Sheathed To Protection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheathed To Protection</em>'.
	 * @see garboard.model.CableRun#getSheathedToProtection()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_SheathedToProtection();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getConnectedToBatteryTerminal <em>Connected To Battery Terminal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Connected To Battery Terminal</em>'.
	 * @see garboard.model.CableRun#getConnectedToBatteryTerminal()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ConnectedToBatteryTerminal();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getSupportSpacing <em>Support Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Support Spacing</em>'.
	 * @see garboard.model.CableRun#getSupportSpacing()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_SupportSpacing();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getRingTerminals <em>Ring Terminals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ring Terminals</em>'.
	 * @see garboard.model.CableRun#getRingTerminals()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_RingTerminals();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getLugsOnStud <em>Lugs On Stud</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lugs On Stud</em>'.
	 * @see garboard.model.CableRun#getLugsOnStud()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_LugsOnStud();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getChafeProtected <em>Chafe Protected</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chafe Protected</em>'.
	 * @see garboard.model.CableRun#getChafeProtected()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_ChafeProtected();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getMultiStrandCopper <em>Multi Strand Copper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Multi Strand Copper</em>'.
	 * @see garboard.model.CableRun#getMultiStrandCopper()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_MultiStrandCopper();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CableRun#getMeasuredDrop <em>Measured Drop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Drop</em>'.
	 * @see garboard.model.CableRun#getMeasuredDrop()
	 * @see #getCableRun()
	 * @generated
	 */
	EAttribute getCableRun_MeasuredDrop();

	/**
	 * Returns the meta object for class '{@link garboard.model.FuelSupply <em>Fuel Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fuel Supply</em>'.
	 * @see garboard.model.FuelSupply
	 * @generated
	 */
	EClass getFuelSupply();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.FuelSupply#getTank <em>Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Tank</em>'.
	 * @see garboard.model.FuelSupply#getTank()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EReference getFuelSupply_Tank();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.FuelSupply#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lines</em>'.
	 * @see garboard.model.FuelSupply#getLines()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EReference getFuelSupply_Lines();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.FuelSupply#getSeparator <em>Separator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Separator</em>'.
	 * @see garboard.model.FuelSupply#getSeparator()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EReference getFuelSupply_Separator();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.FuelSupply#getPumpPosition <em>Pump Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Pump Position</em>'.
	 * @see garboard.model.FuelSupply#getPumpPosition()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EReference getFuelSupply_PumpPosition();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getEngineInletHeight <em>Engine Inlet Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Engine Inlet Height</em>'.
	 * @see garboard.model.FuelSupply#getEngineInletHeight()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_EngineInletHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getHighestLinePoint <em>Highest Line Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Highest Line Point</em>'.
	 * @see garboard.model.FuelSupply#getHighestLinePoint()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_HighestLinePoint();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getLowestLinePoint <em>Lowest Line Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lowest Line Point</em>'.
	 * @see garboard.model.FuelSupply#getLowestLinePoint()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_LowestLinePoint();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPumpFlow <em>Pump Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pump Flow</em>'.
	 * @see garboard.model.FuelSupply#getPumpFlow()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PumpFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getElectricPump <em>Electric Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Electric Pump</em>'.
	 * @see garboard.model.FuelSupply#getElectricPump()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_ElectricPump();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPumpStopsWithEngine <em>Pump Stops With Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pump Stops With Engine</em>'.
	 * @see garboard.model.FuelSupply#getPumpStopsWithEngine()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PumpStopsWithEngine();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPumpWithinReachOfEngine <em>Pump Within Reach Of Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pump Within Reach Of Engine</em>'.
	 * @see garboard.model.FuelSupply#getPumpWithinReachOfEngine()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PumpWithinReachOfEngine();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getAntiSiphon <em>Anti Siphon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Anti Siphon</em>'.
	 * @see garboard.model.FuelSupply#getAntiSiphon()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_AntiSiphon();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getAntiSiphonCrackingPressure <em>Anti Siphon Cracking Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Anti Siphon Cracking Pressure</em>'.
	 * @see garboard.model.FuelSupply#getAntiSiphonCrackingPressure()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_AntiSiphonCrackingPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getTankShutOff <em>Tank Shut Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tank Shut Off</em>'.
	 * @see garboard.model.FuelSupply#getTankShutOff()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_TankShutOff();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getTankShutOffReachableFromOutside <em>Tank Shut Off Reachable From Outside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tank Shut Off Reachable From Outside</em>'.
	 * @see garboard.model.FuelSupply#getTankShutOffReachableFromOutside()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_TankShutOffReachableFromOutside();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getEngineShutOff <em>Engine Shut Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Engine Shut Off</em>'.
	 * @see garboard.model.FuelSupply#getEngineShutOff()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_EngineShutOff();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getLineLengthTankToEngine <em>Line Length Tank To Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Line Length Tank To Engine</em>'.
	 * @see garboard.model.FuelSupply#getLineLengthTankToEngine()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_LineLengthTankToEngine();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getOwnPickUp <em>Own Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Pick Up</em>'.
	 * @see garboard.model.FuelSupply#getOwnPickUp()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_OwnPickUp();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPickUpClearance <em>Pick Up Clearance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pick Up Clearance</em>'.
	 * @see garboard.model.FuelSupply#getPickUpClearance()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PickUpClearance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPickUpScreen <em>Pick Up Screen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pick Up Screen</em>'.
	 * @see garboard.model.FuelSupply#getPickUpScreen()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PickUpScreen();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getReturnToTankInUse <em>Return To Tank In Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Return To Tank In Use</em>'.
	 * @see garboard.model.FuelSupply#getReturnToTankInUse()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_ReturnToTankInUse();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getReturnCanDeadHead <em>Return Can Dead Head</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Return Can Dead Head</em>'.
	 * @see garboard.model.FuelSupply#getReturnCanDeadHead()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_ReturnCanDeadHead();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getFlexibleLastLink <em>Flexible Last Link</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flexible Last Link</em>'.
	 * @see garboard.model.FuelSupply#getFlexibleLastLink()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_FlexibleLastLink();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getRigidLineSupportDistance <em>Rigid Line Support Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rigid Line Support Distance</em>'.
	 * @see garboard.model.FuelSupply#getRigidLineSupportDistance()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_RigidLineSupportDistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getFlexibleHoseSpillVolume <em>Flexible Hose Spill Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flexible Hose Spill Volume</em>'.
	 * @see garboard.model.FuelSupply#getFlexibleHoseSpillVolume()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_FlexibleHoseSpillVolume();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getLeakTestPressure <em>Leak Test Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leak Test Pressure</em>'.
	 * @see garboard.model.FuelSupply#getLeakTestPressure()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_LeakTestPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getLeakTestHeld <em>Leak Test Held</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leak Test Held</em>'.
	 * @see garboard.model.FuelSupply#getLeakTestHeld()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_LeakTestHeld();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getGroundResistance <em>Ground Resistance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ground Resistance</em>'.
	 * @see garboard.model.FuelSupply#getGroundResistance()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_GroundResistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getFillHoseClamps <em>Fill Hose Clamps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fill Hose Clamps</em>'.
	 * @see garboard.model.FuelSupply#getFillHoseClamps()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_FillHoseClamps();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getFillClampBandWidth <em>Fill Clamp Band Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fill Clamp Band Width</em>'.
	 * @see garboard.model.FuelSupply#getFillClampBandWidth()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_FillClampBandWidth();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getVentFlameArrester <em>Vent Flame Arrester</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent Flame Arrester</em>'.
	 * @see garboard.model.FuelSupply#getVentFlameArrester()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_VentFlameArrester();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getCleanVacuumAtPump <em>Clean Vacuum At Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clean Vacuum At Pump</em>'.
	 * @see garboard.model.FuelSupply#getCleanVacuumAtPump()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_CleanVacuumAtPump();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getVacuumAtPumpNow <em>Vacuum At Pump Now</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vacuum At Pump Now</em>'.
	 * @see garboard.model.FuelSupply#getVacuumAtPumpNow()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_VacuumAtPumpNow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getFeedPressure <em>Feed Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feed Pressure</em>'.
	 * @see garboard.model.FuelSupply#getFeedPressure()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_FeedPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getRailPressure <em>Rail Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail Pressure</em>'.
	 * @see garboard.model.FuelSupply#getRailPressure()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_RailPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPlannedRunTime <em>Planned Run Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Run Time</em>'.
	 * @see garboard.model.FuelSupply#getPlannedRunTime()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PlannedRunTime();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getPlannedLoadPower <em>Planned Load Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Load Power</em>'.
	 * @see garboard.model.FuelSupply#getPlannedLoadPower()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_PlannedLoadPower();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSupply#getBackfireFlameArrester <em>Backfire Flame Arrester</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Backfire Flame Arrester</em>'.
	 * @see garboard.model.FuelSupply#getBackfireFlameArrester()
	 * @see #getFuelSupply()
	 * @generated
	 */
	EAttribute getFuelSupply_BackfireFlameArrester();

	/**
	 * Returns the meta object for class '{@link garboard.model.FuelTank <em>Fuel Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fuel Tank</em>'.
	 * @see garboard.model.FuelTank
	 * @generated
	 */
	EClass getFuelTank();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.FuelTank#getName()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see garboard.model.FuelTank#getMaterial()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_Material();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getCapacity <em>Capacity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capacity</em>'.
	 * @see garboard.model.FuelTank#getCapacity()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_Capacity();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getUsableFraction <em>Usable Fraction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Usable Fraction</em>'.
	 * @see garboard.model.FuelTank#getUsableFraction()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_UsableFraction();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.FuelTank#getTop <em>Top</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Top</em>'.
	 * @see garboard.model.FuelTank#getTop()
	 * @see #getFuelTank()
	 * @generated
	 */
	EReference getFuelTank_Top();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getBottomHeight <em>Bottom Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bottom Height</em>'.
	 * @see garboard.model.FuelTank#getBottomHeight()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_BottomHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getLabelled <em>Labelled</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Labelled</em>'.
	 * @see garboard.model.FuelTank#getLabelled()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_Labelled();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getTestPressureOnLabel <em>Test Pressure On Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Test Pressure On Label</em>'.
	 * @see garboard.model.FuelTank#getTestPressureOnLabel()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_TestPressureOnLabel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getTestPressure <em>Test Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Test Pressure</em>'.
	 * @see garboard.model.FuelTank#getTestPressure()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_TestPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getOpeningsAtTop <em>Openings At Top</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Openings At Top</em>'.
	 * @see garboard.model.FuelTank#getOpeningsAtTop()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_OpeningsAtTop();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getMovement <em>Movement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Movement</em>'.
	 * @see garboard.model.FuelTank#getMovement()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_Movement();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelTank#getSharedWithMainEngine <em>Shared With Main Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shared With Main Engine</em>'.
	 * @see garboard.model.FuelTank#getSharedWithMainEngine()
	 * @see #getFuelTank()
	 * @generated
	 */
	EAttribute getFuelTank_SharedWithMainEngine();

	/**
	 * Returns the meta object for class '{@link garboard.model.FuelLineRun <em>Fuel Line Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fuel Line Run</em>'.
	 * @see garboard.model.FuelLineRun
	 * @generated
	 */
	EClass getFuelLineRun();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.FuelLineRun#getName()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getFunction <em>Function</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Function</em>'.
	 * @see garboard.model.FuelLineRun#getFunction()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_Function();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.FuelLineRun#getKind()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.FuelLineRun#getBore()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see garboard.model.FuelLineRun#getLength()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_Length();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getMarking <em>Marking</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Marking</em>'.
	 * @see garboard.model.FuelLineRun#getMarking()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_Marking();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getWorkingPressure <em>Working Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Pressure</em>'.
	 * @see garboard.model.FuelLineRun#getWorkingPressure()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_WorkingPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getClampsPerEnd <em>Clamps Per End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clamps Per End</em>'.
	 * @see garboard.model.FuelLineRun#getClampsPerEnd()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_ClampsPerEnd();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getBarbedEnds <em>Barbed Ends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Barbed Ends</em>'.
	 * @see garboard.model.FuelLineRun#getBarbedEnds()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_BarbedEnds();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getInEngineSpace <em>In Engine Space</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Engine Space</em>'.
	 * @see garboard.model.FuelLineRun#getInEngineSpace()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_InEngineSpace();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelLineRun#getInstalledOn <em>Installed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed On</em>'.
	 * @see garboard.model.FuelLineRun#getInstalledOn()
	 * @see #getFuelLineRun()
	 * @generated
	 */
	EAttribute getFuelLineRun_InstalledOn();

	/**
	 * Returns the meta object for class '{@link garboard.model.FuelSeparator <em>Fuel Separator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fuel Separator</em>'.
	 * @see garboard.model.FuelSeparator
	 * @generated
	 */
	EClass getFuelSeparator();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getMaker <em>Maker</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maker</em>'.
	 * @see garboard.model.FuelSeparator#getMaker()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_Maker();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getRatedFlow <em>Rated Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Flow</em>'.
	 * @see garboard.model.FuelSeparator#getRatedFlow()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_RatedFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getFineness <em>Fineness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fineness</em>'.
	 * @see garboard.model.FuelSeparator#getFineness()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_Fineness();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getOnEngineFineness <em>On Engine Fineness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On Engine Fineness</em>'.
	 * @see garboard.model.FuelSeparator#getOnEngineFineness()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_OnEngineFineness();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getBowl <em>Bowl</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bowl</em>'.
	 * @see garboard.model.FuelSeparator#getBowl()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_Bowl();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.FuelSeparator#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Position</em>'.
	 * @see garboard.model.FuelSeparator#getPosition()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EReference getFuelSeparator_Position();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getClearanceBelow <em>Clearance Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clearance Below</em>'.
	 * @see garboard.model.FuelSeparator#getClearanceBelow()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_ClearanceBelow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getFixedToStructure <em>Fixed To Structure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fixed To Structure</em>'.
	 * @see garboard.model.FuelSeparator#getFixedToStructure()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_FixedToStructure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getHighestPointOfLine <em>Highest Point Of Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Highest Point Of Line</em>'.
	 * @see garboard.model.FuelSeparator#getHighestPointOfLine()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_HighestPointOfLine();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getFireTested <em>Fire Tested</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fire Tested</em>'.
	 * @see garboard.model.FuelSeparator#getFireTested()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_FireTested();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getWaterAlarm <em>Water Alarm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Alarm</em>'.
	 * @see garboard.model.FuelSeparator#getWaterAlarm()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_WaterAlarm();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getElementChangedOn <em>Element Changed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Element Changed On</em>'.
	 * @see garboard.model.FuelSeparator#getElementChangedOn()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_ElementChangedOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getBypassOrSpare <em>Bypass Or Spare</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bypass Or Spare</em>'.
	 * @see garboard.model.FuelSeparator#getBypassOrSpare()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_BypassOrSpare();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelSeparator#getWaterFound <em>Water Found</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Found</em>'.
	 * @see garboard.model.FuelSeparator#getWaterFound()
	 * @see #getFuelSeparator()
	 * @generated
	 */
	EAttribute getFuelSeparator_WaterFound();

	/**
	 * Returns the meta object for class '{@link garboard.model.RawWaterCircuit <em>Raw Water Circuit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Raw Water Circuit</em>'.
	 * @see garboard.model.RawWaterCircuit
	 * @generated
	 */
	EClass getRawWaterCircuit();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.RawWaterCircuit#getPickUp <em>Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Pick Up</em>'.
	 * @see garboard.model.RawWaterCircuit#getPickUp()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_PickUp();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.RawWaterCircuit#getSeacock <em>Seacock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Seacock</em>'.
	 * @see garboard.model.RawWaterCircuit#getSeacock()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_Seacock();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.RawWaterCircuit#getStrainer <em>Strainer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Strainer</em>'.
	 * @see garboard.model.RawWaterCircuit#getStrainer()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_Strainer();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.RawWaterCircuit#getHoses <em>Hoses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Hoses</em>'.
	 * @see garboard.model.RawWaterCircuit#getHoses()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_Hoses();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.RawWaterCircuit#getPump <em>Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Pump</em>'.
	 * @see garboard.model.RawWaterCircuit#getPump()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_Pump();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.RawWaterCircuit#getSiphonBreak <em>Siphon Break</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Siphon Break</em>'.
	 * @see garboard.model.RawWaterCircuit#getSiphonBreak()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_SiphonBreak();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.RawWaterCircuit#getInjection <em>Injection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Injection</em>'.
	 * @see garboard.model.RawWaterCircuit#getInjection()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EReference getRawWaterCircuit_Injection();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getSiphonBreakHoseBore <em>Siphon Break Hose Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Siphon Break Hose Bore</em>'.
	 * @see garboard.model.RawWaterCircuit#getSiphonBreakHoseBore()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_SiphonBreakHoseBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getOwnIntake <em>Own Intake</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Intake</em>'.
	 * @see garboard.model.RawWaterCircuit#getOwnIntake()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_OwnIntake();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getDischargeAheadOfIntake <em>Discharge Ahead Of Intake</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Discharge Ahead Of Intake</em>'.
	 * @see garboard.model.RawWaterCircuit#getDischargeAheadOfIntake()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_DischargeAheadOfIntake();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getMeasuredFlow <em>Measured Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Flow</em>'.
	 * @see garboard.model.RawWaterCircuit#getMeasuredFlow()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_MeasuredFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getMeasuredVacuumAtPump <em>Measured Vacuum At Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Vacuum At Pump</em>'.
	 * @see garboard.model.RawWaterCircuit#getMeasuredVacuumAtPump()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_MeasuredVacuumAtPump();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getMeasuredInletTemperature <em>Measured Inlet Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Inlet Temperature</em>'.
	 * @see garboard.model.RawWaterCircuit#getMeasuredInletTemperature()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_MeasuredInletTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getMeasuredOverboardTemperature <em>Measured Overboard Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Overboard Temperature</em>'.
	 * @see garboard.model.RawWaterCircuit#getMeasuredOverboardTemperature()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_MeasuredOverboardTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getDesignSeaTemperature <em>Design Sea Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Sea Temperature</em>'.
	 * @see garboard.model.RawWaterCircuit#getDesignSeaTemperature()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_DesignSeaTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getSeacockTagAtStartPanel <em>Seacock Tag At Start Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seacock Tag At Start Panel</em>'.
	 * @see garboard.model.RawWaterCircuit#getSeacockTagAtStartPanel()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_SeacockTagAtStartPanel();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getShutWhenNotInUse <em>Shut When Not In Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shut When Not In Use</em>'.
	 * @see garboard.model.RawWaterCircuit#getShutWhenNotInUse()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_ShutWhenNotInUse();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.RawWaterCircuit#getWinteriseConnection <em>Winterise Connection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Winterise Connection</em>'.
	 * @see garboard.model.RawWaterCircuit#getWinteriseConnection()
	 * @see #getRawWaterCircuit()
	 * @generated
	 */
	EAttribute getRawWaterCircuit_WinteriseConnection();

	/**
	 * Returns the meta object for class '{@link garboard.model.HullPickUp <em>Hull Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hull Pick Up</em>'.
	 * @see garboard.model.HullPickUp
	 * @generated
	 */
	EClass getHullPickUp();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.HullPickUp#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.HullPickUp#getKind()
	 * @see #getHullPickUp()
	 * @generated
	 */
	EAttribute getHullPickUp_Kind();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.HullPickUp#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Position</em>'.
	 * @see garboard.model.HullPickUp#getPosition()
	 * @see #getHullPickUp()
	 * @generated
	 */
	EReference getHullPickUp_Position();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.HullPickUp#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.HullPickUp#getBore()
	 * @see #getHullPickUp()
	 * @generated
	 */
	EAttribute getHullPickUp_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.HullPickUp#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see garboard.model.HullPickUp#getMaterial()
	 * @see #getHullPickUp()
	 * @generated
	 */
	EAttribute getHullPickUp_Material();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.HullPickUp#getGratingOpenArea <em>Grating Open Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grating Open Area</em>'.
	 * @see garboard.model.HullPickUp#getGratingOpenArea()
	 * @see #getHullPickUp()
	 * @generated
	 */
	EAttribute getHullPickUp_GratingOpenArea();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.HullPickUp#getLightShipRise <em>Light Ship Rise</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Light Ship Rise</em>'.
	 * @see garboard.model.HullPickUp#getLightShipRise()
	 * @see #getHullPickUp()
	 * @generated
	 */
	EAttribute getHullPickUp_LightShipRise();

	/**
	 * Returns the meta object for class '{@link garboard.model.Seacock <em>Seacock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Seacock</em>'.
	 * @see garboard.model.Seacock
	 * @generated
	 */
	EClass getSeacock();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.Seacock#getKind()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see garboard.model.Seacock#getMaterial()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_Material();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.Seacock#getBore()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getFullBore <em>Full Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Full Bore</em>'.
	 * @see garboard.model.Seacock#getFullBore()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_FullBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getLeverShowsState <em>Lever Shows State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lever Shows State</em>'.
	 * @see garboard.model.Seacock#getLeverShowsState()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_LeverShowsState();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getReachableWithoutTools <em>Reachable Without Tools</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reachable Without Tools</em>'.
	 * @see garboard.model.Seacock#getReachableWithoutTools()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_ReachableWithoutTools();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getCloseToHull <em>Close To Hull</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Close To Hull</em>'.
	 * @see garboard.model.Seacock#getCloseToHull()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_CloseToHull();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getStaticLoadMarked <em>Static Load Marked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Static Load Marked</em>'.
	 * @see garboard.model.Seacock#getStaticLoadMarked()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_StaticLoadMarked();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Seacock#getWorksFreely <em>Works Freely</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Works Freely</em>'.
	 * @see garboard.model.Seacock#getWorksFreely()
	 * @see #getSeacock()
	 * @generated
	 */
	EAttribute getSeacock_WorksFreely();

	/**
	 * Returns the meta object for class '{@link garboard.model.WaterStrainer <em>Water Strainer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Water Strainer</em>'.
	 * @see garboard.model.WaterStrainer
	 * @generated
	 */
	EClass getWaterStrainer();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.WaterStrainer#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Position</em>'.
	 * @see garboard.model.WaterStrainer#getPosition()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EReference getWaterStrainer_Position();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterStrainer#getPortBore <em>Port Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Port Bore</em>'.
	 * @see garboard.model.WaterStrainer#getPortBore()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EAttribute getWaterStrainer_PortBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterStrainer#getBasketOpenArea <em>Basket Open Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Basket Open Area</em>'.
	 * @see garboard.model.WaterStrainer#getBasketOpenArea()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EAttribute getWaterStrainer_BasketOpenArea();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterStrainer#getHoleSize <em>Hole Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hole Size</em>'.
	 * @see garboard.model.WaterStrainer#getHoleSize()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EAttribute getWaterStrainer_HoleSize();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterStrainer#getSeeThroughOrOpenable <em>See Through Or Openable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>See Through Or Openable</em>'.
	 * @see garboard.model.WaterStrainer#getSeeThroughOrOpenable()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EAttribute getWaterStrainer_SeeThroughOrOpenable();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterStrainer#getBesideSeacock <em>Beside Seacock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Beside Seacock</em>'.
	 * @see garboard.model.WaterStrainer#getBesideSeacock()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EAttribute getWaterStrainer_BesideSeacock();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterStrainer#getLidAboveWaterline <em>Lid Above Waterline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lid Above Waterline</em>'.
	 * @see garboard.model.WaterStrainer#getLidAboveWaterline()
	 * @see #getWaterStrainer()
	 * @generated
	 */
	EAttribute getWaterStrainer_LidAboveWaterline();

	/**
	 * Returns the meta object for class '{@link garboard.model.WaterHoseRun <em>Water Hose Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Water Hose Run</em>'.
	 * @see garboard.model.WaterHoseRun
	 * @generated
	 */
	EClass getWaterHoseRun();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.WaterHoseRun#getName()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see garboard.model.WaterHoseRun#getSection()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_Section();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.WaterHoseRun#getKind()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.WaterHoseRun#getBore()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see garboard.model.WaterHoseRun#getLength()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_Length();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getClampsPerEnd <em>Clamps Per End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clamps Per End</em>'.
	 * @see garboard.model.WaterHoseRun#getClampsPerEnd()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_ClampsPerEnd();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getCollapseProof <em>Collapse Proof</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Collapse Proof</em>'.
	 * @see garboard.model.WaterHoseRun#getCollapseProof()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_CollapseProof();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.WaterHoseRun#getFittings <em>Fittings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Fittings</em>'.
	 * @see garboard.model.WaterHoseRun#getFittings()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EReference getWaterHoseRun_Fittings();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterHoseRun#getInstalledOn <em>Installed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed On</em>'.
	 * @see garboard.model.WaterHoseRun#getInstalledOn()
	 * @see #getWaterHoseRun()
	 * @generated
	 */
	EAttribute getWaterHoseRun_InstalledOn();

	/**
	 * Returns the meta object for class '{@link garboard.model.PipeFitting <em>Pipe Fitting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pipe Fitting</em>'.
	 * @see garboard.model.PipeFitting
	 * @generated
	 */
	EClass getPipeFitting();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.PipeFitting#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.PipeFitting#getKind()
	 * @see #getPipeFitting()
	 * @generated
	 */
	EAttribute getPipeFitting_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.PipeFitting#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see garboard.model.PipeFitting#getCount()
	 * @see #getPipeFitting()
	 * @generated
	 */
	EAttribute getPipeFitting_Count();

	/**
	 * Returns the meta object for class '{@link garboard.model.WaterPump <em>Water Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Water Pump</em>'.
	 * @see garboard.model.WaterPump
	 * @generated
	 */
	EClass getWaterPump();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.WaterPump#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Position</em>'.
	 * @see garboard.model.WaterPump#getPosition()
	 * @see #getWaterPump()
	 * @generated
	 */
	EReference getWaterPump_Position();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getInletBore <em>Inlet Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inlet Bore</em>'.
	 * @see garboard.model.WaterPump#getInletBore()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_InletBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getOutletBore <em>Outlet Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outlet Bore</em>'.
	 * @see garboard.model.WaterPump#getOutletBore()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_OutletBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getRatedFlow <em>Rated Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Flow</em>'.
	 * @see garboard.model.WaterPump#getRatedFlow()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_RatedFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getSelfPriming <em>Self Priming</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Self Priming</em>'.
	 * @see garboard.model.WaterPump#getSelfPriming()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_SelfPriming();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getImpellerPiecesMissing <em>Impeller Pieces Missing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Impeller Pieces Missing</em>'.
	 * @see garboard.model.WaterPump#getImpellerPiecesMissing()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_ImpellerPiecesMissing();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getImpellerPiecesFound <em>Impeller Pieces Found</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Impeller Pieces Found</em>'.
	 * @see garboard.model.WaterPump#getImpellerPiecesFound()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_ImpellerPiecesFound();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.WaterPump#getImpellerChangedOn <em>Impeller Changed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Impeller Changed On</em>'.
	 * @see garboard.model.WaterPump#getImpellerChangedOn()
	 * @see #getWaterPump()
	 * @generated
	 */
	EAttribute getWaterPump_ImpellerChangedOn();

	/**
	 * Returns the meta object for class '{@link garboard.model.SiphonBreak <em>Siphon Break</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Siphon Break</em>'.
	 * @see garboard.model.SiphonBreak
	 * @generated
	 */
	EClass getSiphonBreak();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.SiphonBreak#getKind()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_Kind();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.SiphonBreak#getVentSeat <em>Vent Seat</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Vent Seat</em>'.
	 * @see garboard.model.SiphonBreak#getVentSeat()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EReference getSiphonBreak_VentSeat();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see garboard.model.SiphonBreak#getPlace()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_Place();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.SiphonBreak#getBore()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getHighestPoint <em>Highest Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Highest Point</em>'.
	 * @see garboard.model.SiphonBreak#getHighestPoint()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_HighestPoint();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getVentHose <em>Vent Hose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent Hose</em>'.
	 * @see garboard.model.SiphonBreak#getVentHose()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_VentHose();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getVentHoseFree <em>Vent Hose Free</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent Hose Free</em>'.
	 * @see garboard.model.SiphonBreak#getVentHoseFree()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_VentHoseFree();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getVentHoseEndHeight <em>Vent Hose End Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent Hose End Height</em>'.
	 * @see garboard.model.SiphonBreak#getVentHoseEndHeight()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_VentHoseEndHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getBleedBore <em>Bleed Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bleed Bore</em>'.
	 * @see garboard.model.SiphonBreak#getBleedBore()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_BleedBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getTellTaleVisible <em>Tell Tale Visible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tell Tale Visible</em>'.
	 * @see garboard.model.SiphonBreak#getTellTaleVisible()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_TellTaleVisible();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getAboveElectrics <em>Above Electrics</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Above Electrics</em>'.
	 * @see garboard.model.SiphonBreak#getAboveElectrics()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_AboveElectrics();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getDripShield <em>Drip Shield</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drip Shield</em>'.
	 * @see garboard.model.SiphonBreak#getDripShield()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_DripShield();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getServicedOn <em>Serviced On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Serviced On</em>'.
	 * @see garboard.model.SiphonBreak#getServicedOn()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_ServicedOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SiphonBreak#getValveTested <em>Valve Tested</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Valve Tested</em>'.
	 * @see garboard.model.SiphonBreak#getValveTested()
	 * @see #getSiphonBreak()
	 * @generated
	 */
	EAttribute getSiphonBreak_ValveTested();

	/**
	 * Returns the meta object for class '{@link garboard.model.ExhaustRun <em>Exhaust Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Exhaust Run</em>'.
	 * @see garboard.model.ExhaustRun
	 * @generated
	 */
	EClass getExhaustRun();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.ExhaustRun#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Path</em>'.
	 * @see garboard.model.ExhaustRun#getPath()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_Path();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.ExhaustRun#getSections <em>Sections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sections</em>'.
	 * @see garboard.model.ExhaustRun#getSections()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_Sections();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustRun#getMuffler <em>Muffler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Muffler</em>'.
	 * @see garboard.model.ExhaustRun#getMuffler()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_Muffler();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustRun#getRiser <em>Riser</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Riser</em>'.
	 * @see garboard.model.ExhaustRun#getRiser()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_Riser();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustRun#getCrest <em>Crest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Crest</em>'.
	 * @see garboard.model.ExhaustRun#getCrest()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_Crest();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustRun#getOutlet <em>Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Outlet</em>'.
	 * @see garboard.model.ExhaustRun#getOutlet()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_Outlet();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustRun#getSeparatorDrain <em>Separator Drain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Separator Drain</em>'.
	 * @see garboard.model.ExhaustRun#getSeparatorDrain()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EReference getExhaustRun_SeparatorDrain();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getTurbineOutletPortBore <em>Turbine Outlet Port Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turbine Outlet Port Bore</em>'.
	 * @see garboard.model.ExhaustRun#getTurbineOutletPortBore()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_TurbineOutletPortBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getOwnSystem <em>Own System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own System</em>'.
	 * @see garboard.model.ExhaustRun#getOwnSystem()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_OwnSystem();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getGasTight <em>Gas Tight</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gas Tight</em>'.
	 * @see garboard.model.ExhaustRun#getGasTight()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_GasTight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getDryPartsLagged <em>Dry Parts Lagged</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dry Parts Lagged</em>'.
	 * @see garboard.model.ExhaustRun#getDryPartsLagged()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_DryPartsLagged();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getDryPartSurfaceTemperature <em>Dry Part Surface Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dry Part Surface Temperature</em>'.
	 * @see garboard.model.ExhaustRun#getDryPartSurfaceTemperature()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_DryPartSurfaceTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getWeightOnManifold <em>Weight On Manifold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weight On Manifold</em>'.
	 * @see garboard.model.ExhaustRun#getWeightOnManifold()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_WeightOnManifold();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getTemperatureAlarm <em>Temperature Alarm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature Alarm</em>'.
	 * @see garboard.model.ExhaustRun#getTemperatureAlarm()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_TemperatureAlarm();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getTemperatureAlarmSetting <em>Temperature Alarm Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature Alarm Setting</em>'.
	 * @see garboard.model.ExhaustRun#getTemperatureAlarmSetting()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_TemperatureAlarmSetting();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getTestTapFitted <em>Test Tap Fitted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Test Tap Fitted</em>'.
	 * @see garboard.model.ExhaustRun#getTestTapFitted()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_TestTapFitted();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getTestTapDistance <em>Test Tap Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Test Tap Distance</em>'.
	 * @see garboard.model.ExhaustRun#getTestTapDistance()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_TestTapDistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getMeasuredBackPressure <em>Measured Back Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Back Pressure</em>'.
	 * @see garboard.model.ExhaustRun#getMeasuredBackPressure()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_MeasuredBackPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getMeasuredBackPressureLoad <em>Measured Back Pressure Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Back Pressure Load</em>'.
	 * @see garboard.model.ExhaustRun#getMeasuredBackPressureLoad()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_MeasuredBackPressureLoad();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getBaselineBackPressure <em>Baseline Back Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Baseline Back Pressure</em>'.
	 * @see garboard.model.ExhaustRun#getBaselineBackPressure()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_BaselineBackPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getSilencerLoss <em>Silencer Loss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Silencer Loss</em>'.
	 * @see garboard.model.ExhaustRun#getSilencerLoss()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_SilencerLoss();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getWaterFullLength <em>Water Full Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Full Length</em>'.
	 * @see garboard.model.ExhaustRun#getWaterFullLength()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_WaterFullLength();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getBulkheadsSealed <em>Bulkheads Sealed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bulkheads Sealed</em>'.
	 * @see garboard.model.ExhaustRun#getBulkheadsSealed()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_BulkheadsSealed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getJointsAccessible <em>Joints Accessible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Joints Accessible</em>'.
	 * @see garboard.model.ExhaustRun#getJointsAccessible()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_JointsAccessible();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustRun#getClearOfCombustibles <em>Clear Of Combustibles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clear Of Combustibles</em>'.
	 * @see garboard.model.ExhaustRun#getClearOfCombustibles()
	 * @see #getExhaustRun()
	 * @generated
	 */
	EAttribute getExhaustRun_ClearOfCombustibles();

	/**
	 * Returns the meta object for class '{@link garboard.model.ExhaustPoint <em>Exhaust Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Exhaust Point</em>'.
	 * @see garboard.model.ExhaustPoint
	 * @generated
	 */
	EClass getExhaustPoint();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustPoint#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.ExhaustPoint#getName()
	 * @see #getExhaustPoint()
	 * @generated
	 */
	EAttribute getExhaustPoint_Name();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustPoint#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Position</em>'.
	 * @see garboard.model.ExhaustPoint#getPosition()
	 * @see #getExhaustPoint()
	 * @generated
	 */
	EReference getExhaustPoint_Position();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustPoint#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.ExhaustPoint#getBore()
	 * @see #getExhaustPoint()
	 * @generated
	 */
	EAttribute getExhaustPoint_Bore();

	/**
	 * Returns the meta object for class '{@link garboard.model.ExhaustSectionRun <em>Exhaust Section Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Exhaust Section Run</em>'.
	 * @see garboard.model.ExhaustSectionRun
	 * @generated
	 */
	EClass getExhaustSectionRun();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.ExhaustSectionRun#getName()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see garboard.model.ExhaustSectionRun#getSection()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Section();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getStandard <em>Standard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Standard</em>'.
	 * @see garboard.model.ExhaustSectionRun#getStandard()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Standard();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.ExhaustSectionRun#getBore()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see garboard.model.ExhaustSectionRun#getLength()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Length();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getRise <em>Rise</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rise</em>'.
	 * @see garboard.model.ExhaustSectionRun#getRise()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Rise();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getFall <em>Fall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fall</em>'.
	 * @see garboard.model.ExhaustSectionRun#getFall()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_Fall();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getSlopesBackToMuffler <em>Slopes Back To Muffler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slopes Back To Muffler</em>'.
	 * @see garboard.model.ExhaustSectionRun#getSlopesBackToMuffler()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_SlopesBackToMuffler();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.ExhaustSectionRun#getBends <em>Bends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bends</em>'.
	 * @see garboard.model.ExhaustSectionRun#getBends()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EReference getExhaustSectionRun_Bends();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getClampsPerEnd <em>Clamps Per End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clamps Per End</em>'.
	 * @see garboard.model.ExhaustSectionRun#getClampsPerEnd()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_ClampsPerEnd();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getClampBandWidth <em>Clamp Band Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clamp Band Width</em>'.
	 * @see garboard.model.ExhaustSectionRun#getClampBandWidth()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_ClampBandWidth();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getSupportSpacing <em>Support Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Support Spacing</em>'.
	 * @see garboard.model.ExhaustSectionRun#getSupportSpacing()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_SupportSpacing();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getSagFree <em>Sag Free</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sag Free</em>'.
	 * @see garboard.model.ExhaustSectionRun#getSagFree()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_SagFree();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getInstalledOn <em>Installed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed On</em>'.
	 * @see garboard.model.ExhaustSectionRun#getInstalledOn()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_InstalledOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustSectionRun#getGasTemperature <em>Gas Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gas Temperature</em>'.
	 * @see garboard.model.ExhaustSectionRun#getGasTemperature()
	 * @see #getExhaustSectionRun()
	 * @generated
	 */
	EAttribute getExhaustSectionRun_GasTemperature();

	/**
	 * Returns the meta object for class '{@link garboard.model.ExhaustBend <em>Exhaust Bend</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Exhaust Bend</em>'.
	 * @see garboard.model.ExhaustBend
	 * @generated
	 */
	EClass getExhaustBend();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustBend#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.ExhaustBend#getKind()
	 * @see #getExhaustBend()
	 * @generated
	 */
	EAttribute getExhaustBend_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustBend#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see garboard.model.ExhaustBend#getCount()
	 * @see #getExhaustBend()
	 * @generated
	 */
	EAttribute getExhaustBend_Count();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustBend#getRadius <em>Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Radius</em>'.
	 * @see garboard.model.ExhaustBend#getRadius()
	 * @see #getExhaustBend()
	 * @generated
	 */
	EAttribute getExhaustBend_Radius();

	/**
	 * Returns the meta object for class '{@link garboard.model.Muffler <em>Muffler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Muffler</em>'.
	 * @see garboard.model.Muffler
	 * @generated
	 */
	EClass getMuffler();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.Muffler#getKind()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_Kind();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.Muffler#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Position</em>'.
	 * @see garboard.model.Muffler#getPosition()
	 * @see #getMuffler()
	 * @generated
	 */
	EReference getMuffler_Position();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getInletBore <em>Inlet Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inlet Bore</em>'.
	 * @see garboard.model.Muffler#getInletBore()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_InletBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getOutletBore <em>Outlet Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outlet Bore</em>'.
	 * @see garboard.model.Muffler#getOutletBore()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_OutletBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getVolumeToInlet <em>Volume To Inlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volume To Inlet</em>'.
	 * @see garboard.model.Muffler#getVolumeToInlet()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_VolumeToInlet();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getResidueFraction <em>Residue Fraction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Residue Fraction</em>'.
	 * @see garboard.model.Muffler#getResidueFraction()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_ResidueFraction();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getBottomHeight <em>Bottom Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bottom Height</em>'.
	 * @see garboard.model.Muffler#getBottomHeight()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_BottomHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getInletInvertHeight <em>Inlet Invert Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inlet Invert Height</em>'.
	 * @see garboard.model.Muffler#getInletInvertHeight()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_InletInvertHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getDistanceFromEngine <em>Distance From Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance From Engine</em>'.
	 * @see garboard.model.Muffler#getDistanceFromEngine()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_DistanceFromEngine();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getLowestPoint <em>Lowest Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lowest Point</em>'.
	 * @see garboard.model.Muffler#getLowestPoint()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_LowestPoint();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getMarked <em>Marked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Marked</em>'.
	 * @see garboard.model.Muffler#getMarked()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_Marked();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getDrainPlug <em>Drain Plug</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drain Plug</em>'.
	 * @see garboard.model.Muffler#getDrainPlug()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_DrainPlug();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getDrainPosition <em>Drain Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drain Position</em>'.
	 * @see garboard.model.Muffler#getDrainPosition()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_DrainPosition();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getLevelAfterStopBelowInlet <em>Level After Stop Below Inlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level After Stop Below Inlet</em>'.
	 * @see garboard.model.Muffler#getLevelAfterStopBelowInlet()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_LevelAfterStopBelowInlet();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getSupported <em>Supported</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supported</em>'.
	 * @see garboard.model.Muffler#getSupported()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_Supported();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Muffler#getPressureLoss <em>Pressure Loss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pressure Loss</em>'.
	 * @see garboard.model.Muffler#getPressureLoss()
	 * @see #getMuffler()
	 * @generated
	 */
	EAttribute getMuffler_PressureLoss();

	/**
	 * Returns the meta object for class '{@link garboard.model.Riser <em>Riser</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Riser</em>'.
	 * @see garboard.model.Riser
	 * @generated
	 */
	EClass getRiser();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.Riser#getDryCrestInside <em>Dry Crest Inside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Dry Crest Inside</em>'.
	 * @see garboard.model.Riser#getDryCrestInside()
	 * @see #getRiser()
	 * @generated
	 */
	EReference getRiser_DryCrestInside();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Riser#getInjectionOnFallingLeg <em>Injection On Falling Leg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Injection On Falling Leg</em>'.
	 * @see garboard.model.Riser#getInjectionOnFallingLeg()
	 * @see #getRiser()
	 * @generated
	 */
	EAttribute getRiser_InjectionOnFallingLeg();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Riser#getInjectionPointsDown <em>Injection Points Down</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Injection Points Down</em>'.
	 * @see garboard.model.Riser#getInjectionPointsDown()
	 * @see #getRiser()
	 * @generated
	 */
	EAttribute getRiser_InjectionPointsDown();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Riser#getInjectionDropToMuffler <em>Injection Drop To Muffler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Injection Drop To Muffler</em>'.
	 * @see garboard.model.Riser#getInjectionDropToMuffler()
	 * @see #getRiser()
	 * @generated
	 */
	EAttribute getRiser_InjectionDropToMuffler();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Riser#getLiftHeight <em>Lift Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lift Height</em>'.
	 * @see garboard.model.Riser#getLiftHeight()
	 * @see #getRiser()
	 * @generated
	 */
	EAttribute getRiser_LiftHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Riser#getElbowBore <em>Elbow Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elbow Bore</em>'.
	 * @see garboard.model.Riser#getElbowBore()
	 * @see #getRiser()
	 * @generated
	 */
	EAttribute getRiser_ElbowBore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Riser#getElbowInspectedOn <em>Elbow Inspected On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elbow Inspected On</em>'.
	 * @see garboard.model.Riser#getElbowInspectedOn()
	 * @see #getRiser()
	 * @generated
	 */
	EAttribute getRiser_ElbowInspectedOn();

	/**
	 * Returns the meta object for class '{@link garboard.model.ExhaustCrest <em>Exhaust Crest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Exhaust Crest</em>'.
	 * @see garboard.model.ExhaustCrest
	 * @generated
	 */
	EClass getExhaustCrest();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustCrest#getInsideBottom <em>Inside Bottom</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Inside Bottom</em>'.
	 * @see garboard.model.ExhaustCrest#getInsideBottom()
	 * @see #getExhaustCrest()
	 * @generated
	 */
	EReference getExhaustCrest_InsideBottom();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustCrest#getVented <em>Vented</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vented</em>'.
	 * @see garboard.model.ExhaustCrest#getVented()
	 * @see #getExhaustCrest()
	 * @generated
	 */
	EAttribute getExhaustCrest_Vented();

	/**
	 * Returns the meta object for class '{@link garboard.model.ExhaustOutlet <em>Exhaust Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Exhaust Outlet</em>'.
	 * @see garboard.model.ExhaustOutlet
	 * @generated
	 */
	EClass getExhaustOutlet();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see garboard.model.ExhaustOutlet#getPlace()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_Place();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.ExhaustOutlet#getInsideBottom <em>Inside Bottom</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Inside Bottom</em>'.
	 * @see garboard.model.ExhaustOutlet#getInsideBottom()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EReference getExhaustOutlet_InsideBottom();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.ExhaustOutlet#getBore()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getAntiSurge <em>Anti Surge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Anti Surge</em>'.
	 * @see garboard.model.ExhaustOutlet#getAntiSurge()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_AntiSurge();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getClosedByValve <em>Closed By Valve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Closed By Valve</em>'.
	 * @see garboard.model.ExhaustOutlet#getClosedByValve()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_ClosedByValve();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getUnderSwimPlatform <em>Under Swim Platform</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Under Swim Platform</em>'.
	 * @see garboard.model.ExhaustOutlet#getUnderSwimPlatform()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_UnderSwimPlatform();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getNearOpenings <em>Near Openings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Near Openings</em>'.
	 * @see garboard.model.ExhaustOutlet#getNearOpenings()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_NearOpenings();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getDistanceToOpening <em>Distance To Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance To Opening</em>'.
	 * @see garboard.model.ExhaustOutlet#getDistanceToOpening()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_DistanceToOpening();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getWaterVisible <em>Water Visible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Visible</em>'.
	 * @see garboard.model.ExhaustOutlet#getWaterVisible()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_WaterVisible();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ExhaustOutlet#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see garboard.model.ExhaustOutlet#getMaterial()
	 * @see #getExhaustOutlet()
	 * @generated
	 */
	EAttribute getExhaustOutlet_Material();

	/**
	 * Returns the meta object for class '{@link garboard.model.SeparatorDrain <em>Separator Drain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Separator Drain</em>'.
	 * @see garboard.model.SeparatorDrain
	 * @generated
	 */
	EClass getSeparatorDrain();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeparatorDrain#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see garboard.model.SeparatorDrain#getBore()
	 * @see #getSeparatorDrain()
	 * @generated
	 */
	EAttribute getSeparatorDrain_Bore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeparatorDrain#getBaseHeight <em>Base Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base Height</em>'.
	 * @see garboard.model.SeparatorDrain#getBaseHeight()
	 * @see #getSeparatorDrain()
	 * @generated
	 */
	EAttribute getSeparatorDrain_BaseHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeparatorDrain#getOwnSeacock <em>Own Seacock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Seacock</em>'.
	 * @see garboard.model.SeparatorDrain#getOwnSeacock()
	 * @see #getSeparatorDrain()
	 * @generated
	 */
	EAttribute getSeparatorDrain_OwnSeacock();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeparatorDrain#getFallsAllTheWay <em>Falls All The Way</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Falls All The Way</em>'.
	 * @see garboard.model.SeparatorDrain#getFallsAllTheWay()
	 * @see #getSeparatorDrain()
	 * @generated
	 */
	EAttribute getSeparatorDrain_FallsAllTheWay();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeparatorDrain#getGasSidePressure <em>Gas Side Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gas Side Pressure</em>'.
	 * @see garboard.model.SeparatorDrain#getGasSidePressure()
	 * @see #getSeparatorDrain()
	 * @generated
	 */
	EAttribute getSeparatorDrain_GasSidePressure();

	/**
	 * Returns the meta object for class '{@link garboard.model.Ventilation <em>Ventilation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ventilation</em>'.
	 * @see garboard.model.Ventilation
	 * @generated
	 */
	EClass getVentilation();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getNetVolume <em>Net Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Net Volume</em>'.
	 * @see garboard.model.Ventilation#getNetVolume()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_NetVolume();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getGrossVolume <em>Gross Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gross Volume</em>'.
	 * @see garboard.model.Ventilation#getGrossVolume()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_GrossVolume();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getOpenAreaToAtmosphere <em>Open Area To Atmosphere</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Area To Atmosphere</em>'.
	 * @see garboard.model.Ventilation#getOpenAreaToAtmosphere()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_OpenAreaToAtmosphere();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getConnectedOpeningFraction <em>Connected Opening Fraction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Connected Opening Fraction</em>'.
	 * @see garboard.model.Ventilation#getConnectedOpeningFraction()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_ConnectedOpeningFraction();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getCompartmentHeight <em>Compartment Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Compartment Height</em>'.
	 * @see garboard.model.Ventilation#getCompartmentHeight()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_CompartmentHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getBilgeWaterHeight <em>Bilge Water Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bilge Water Height</em>'.
	 * @see garboard.model.Ventilation#getBilgeWaterHeight()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_BilgeWaterHeight();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Ventilation#getDucts <em>Ducts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ducts</em>'.
	 * @see garboard.model.Ventilation#getDucts()
	 * @see #getVentilation()
	 * @generated
	 */
	EReference getVentilation_Ducts();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getBlowerRatedFlow <em>Blower Rated Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blower Rated Flow</em>'.
	 * @see garboard.model.Ventilation#getBlowerRatedFlow()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_BlowerRatedFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getBlowerMeasuredFlow <em>Blower Measured Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blower Measured Flow</em>'.
	 * @see garboard.model.Ventilation#getBlowerMeasuredFlow()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_BlowerMeasuredFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getBlowerLabelAtEachStart <em>Blower Label At Each Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blower Label At Each Start</em>'.
	 * @see garboard.model.Ventilation#getBlowerLabelAtEachStart()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_BlowerLabelAtEachStart();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getBlowerInterlocked <em>Blower Interlocked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blower Interlocked</em>'.
	 * @see garboard.model.Ventilation#getBlowerInterlocked()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_BlowerInterlocked();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getBlowerIgnitionProtected <em>Blower Ignition Protected</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blower Ignition Protected</em>'.
	 * @see garboard.model.Ventilation#getBlowerIgnitionProtected()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_BlowerIgnitionProtected();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getSealedFromAccommodation <em>Sealed From Accommodation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sealed From Accommodation</em>'.
	 * @see garboard.model.Ventilation#getSealedFromAccommodation()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_SealedFromAccommodation();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getSupplyFromOutside <em>Supply From Outside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supply From Outside</em>'.
	 * @see garboard.model.Ventilation#getSupplyFromOutside()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_SupplyFromOutside();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getSupplyAreaTotal <em>Supply Area Total</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supply Area Total</em>'.
	 * @see garboard.model.Ventilation#getSupplyAreaTotal()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_SupplyAreaTotal();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getExhaustAreaTotal <em>Exhaust Area Total</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exhaust Area Total</em>'.
	 * @see garboard.model.Ventilation#getExhaustAreaTotal()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_ExhaustAreaTotal();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getNaturalDraught <em>Natural Draught</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Natural Draught</em>'.
	 * @see garboard.model.Ventilation#getNaturalDraught()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_NaturalDraught();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getOutsideTemperature <em>Outside Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outside Temperature</em>'.
	 * @see garboard.model.Ventilation#getOutsideTemperature()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_OutsideTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getCompartmentTemperature <em>Compartment Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Compartment Temperature</em>'.
	 * @see garboard.model.Ventilation#getCompartmentTemperature()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_CompartmentTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getAirInletTemperature <em>Air Inlet Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Air Inlet Temperature</em>'.
	 * @see garboard.model.Ventilation#getAirInletTemperature()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_AirInletTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getDepression <em>Depression</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depression</em>'.
	 * @see garboard.model.Ventilation#getDepression()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_Depression();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getDesignAmbient <em>Design Ambient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Ambient</em>'.
	 * @see garboard.model.Ventilation#getDesignAmbient()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_DesignAmbient();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getDuctsLowAndHigh <em>Ducts Low And High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ducts Low And High</em>'.
	 * @see garboard.model.Ventilation#getDuctsLowAndHigh()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_DuctsLowAndHigh();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getClearOfExhaustOutlet <em>Clear Of Exhaust Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clear Of Exhaust Outlet</em>'.
	 * @see garboard.model.Ventilation#getClearOfExhaustOutlet()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_ClearOfExhaustOutlet();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getIgnitionProtectedComponents <em>Ignition Protected Components</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ignition Protected Components</em>'.
	 * @see garboard.model.Ventilation#getIgnitionProtectedComponents()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_IgnitionProtectedComponents();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getCrankingMotorFitted <em>Cranking Motor Fitted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cranking Motor Fitted</em>'.
	 * @see garboard.model.Ventilation#getCrankingMotorFitted()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_CrankingMotorFitted();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Ventilation#getFanFlow <em>Fan Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fan Flow</em>'.
	 * @see garboard.model.Ventilation#getFanFlow()
	 * @see #getVentilation()
	 * @generated
	 */
	EAttribute getVentilation_FanFlow();

	/**
	 * Returns the meta object for class '{@link garboard.model.AirDuct <em>Air Duct</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Air Duct</em>'.
	 * @see garboard.model.AirDuct
	 * @generated
	 */
	EClass getAirDuct();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.AirDuct#getName()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getFunction <em>Function</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Function</em>'.
	 * @see garboard.model.AirDuct#getFunction()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_Function();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getArea <em>Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Area</em>'.
	 * @see garboard.model.AirDuct#getArea()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_Area();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getEndFittingArea <em>End Fitting Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End Fitting Area</em>'.
	 * @see garboard.model.AirDuct#getEndFittingArea()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_EndFittingArea();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getFlexible <em>Flexible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flexible</em>'.
	 * @see garboard.model.AirDuct#getFlexible()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_Flexible();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getMouthHeight <em>Mouth Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mouth Height</em>'.
	 * @see garboard.model.AirDuct#getMouthHeight()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_MouthHeight();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AirDuct#getTerminatesOutside <em>Terminates Outside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Terminates Outside</em>'.
	 * @see garboard.model.AirDuct#getTerminatesOutside()
	 * @see #getAirDuct()
	 * @generated
	 */
	EAttribute getAirDuct_TerminatesOutside();

	/**
	 * Returns the meta object for class '{@link garboard.model.Mounting <em>Mounting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mounting</em>'.
	 * @see garboard.model.Mounting
	 * @generated
	 */
	EClass getMounting();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getBedsRigid <em>Beds Rigid</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Beds Rigid</em>'.
	 * @see garboard.model.Mounting#getBedsRigid()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_BedsRigid();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getMountsAligned <em>Mounts Aligned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mounts Aligned</em>'.
	 * @see garboard.model.Mounting#getMountsAligned()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_MountsAligned();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getClearanceAround <em>Clearance Around</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clearance Around</em>'.
	 * @see garboard.model.Mounting#getClearanceAround()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_ClearanceAround();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getFlexibleConnections <em>Flexible Connections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flexible Connections</em>'.
	 * @see garboard.model.Mounting#getFlexibleConnections()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_FlexibleConnections();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getDripTray <em>Drip Tray</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drip Tray</em>'.
	 * @see garboard.model.Mounting#getDripTray()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_DripTray();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getAccessForService <em>Access For Service</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Access For Service</em>'.
	 * @see garboard.model.Mounting#getAccessForService()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_AccessForService();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getBondingConductor <em>Bonding Conductor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bonding Conductor</em>'.
	 * @see garboard.model.Mounting#getBondingConductor()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_BondingConductor();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getBondedToCommonGround <em>Bonded To Common Ground</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bonded To Common Ground</em>'.
	 * @see garboard.model.Mounting#getBondedToCommonGround()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_BondedToCommonGround();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getCommonNegativeLink <em>Common Negative Link</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Common Negative Link</em>'.
	 * @see garboard.model.Mounting#getCommonNegativeLink()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_CommonNegativeLink();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getDcNegativeIsolated <em>Dc Negative Isolated</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dc Negative Isolated</em>'.
	 * @see garboard.model.Mounting#getDcNegativeIsolated()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_DcNegativeIsolated();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getInstalledAngleFore <em>Installed Angle Fore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed Angle Fore</em>'.
	 * @see garboard.model.Mounting#getInstalledAngleFore()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_InstalledAngleFore();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getInstalledAngleSide <em>Installed Angle Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed Angle Side</em>'.
	 * @see garboard.model.Mounting#getInstalledAngleSide()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_InstalledAngleSide();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getHeightAboveBilge <em>Height Above Bilge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Above Bilge</em>'.
	 * @see garboard.model.Mounting#getHeightAboveBilge()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_HeightAboveBilge();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getAnodesFitted <em>Anodes Fitted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Anodes Fitted</em>'.
	 * @see garboard.model.Mounting#getAnodesFitted()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_AnodesFitted();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getLabelsPosted <em>Labels Posted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Labels Posted</em>'.
	 * @see garboard.model.Mounting#getLabelsPosted()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_LabelsPosted();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Mounting#getRotatingPartsGuarded <em>Rotating Parts Guarded</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rotating Parts Guarded</em>'.
	 * @see garboard.model.Mounting#getRotatingPartsGuarded()
	 * @see #getMounting()
	 * @generated
	 */
	EAttribute getMounting_RotatingPartsGuarded();

	/**
	 * Returns the meta object for class '{@link garboard.model.AcOutput <em>Ac Output</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ac Output</em>'.
	 * @see garboard.model.AcOutput
	 * @generated
	 */
	EClass getAcOutput();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.AcOutput#getTransfer <em>Transfer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Transfer</em>'.
	 * @see garboard.model.AcOutput#getTransfer()
	 * @see #getAcOutput()
	 * @generated
	 */
	EReference getAcOutput_Transfer();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getProtectionDevice <em>Protection Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Device</em>'.
	 * @see garboard.model.AcOutput#getProtectionDevice()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ProtectionDevice();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getProtectionRating <em>Protection Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Rating</em>'.
	 * @see garboard.model.AcOutput#getProtectionRating()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ProtectionRating();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getTripCurve <em>Trip Curve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trip Curve</em>'.
	 * @see garboard.model.AcOutput#getTripCurve()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_TripCurve();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getProtectionPoles <em>Protection Poles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Poles</em>'.
	 * @see garboard.model.AcOutput#getProtectionPoles()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ProtectionPoles();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getProtectionDistance <em>Protection Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protection Distance</em>'.
	 * @see garboard.model.AcOutput#getProtectionDistance()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ProtectionDistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getResidualCurrentDevice <em>Residual Current Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Residual Current Device</em>'.
	 * @see garboard.model.AcOutput#getResidualCurrentDevice()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ResidualCurrentDevice();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getResidualTripCurrent <em>Residual Trip Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Residual Trip Current</em>'.
	 * @see garboard.model.AcOutput#getResidualTripCurrent()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ResidualTripCurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getResidualTripTime <em>Residual Trip Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Residual Trip Time</em>'.
	 * @see garboard.model.AcOutput#getResidualTripTime()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ResidualTripTime();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.AcOutput#getOutputCable <em>Output Cable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Output Cable</em>'.
	 * @see garboard.model.AcOutput#getOutputCable()
	 * @see #getAcOutput()
	 * @generated
	 */
	EReference getAcOutput_OutputCable();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getNeutralBond <em>Neutral Bond</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Neutral Bond</em>'.
	 * @see garboard.model.AcOutput#getNeutralBond()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_NeutralBond();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getProtectiveConductorSize <em>Protective Conductor Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protective Conductor Size</em>'.
	 * @see garboard.model.AcOutput#getProtectiveConductorSize()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ProtectiveConductorSize();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getProtectiveConductorResistance <em>Protective Conductor Resistance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protective Conductor Resistance</em>'.
	 * @see garboard.model.AcOutput#getProtectiveConductorResistance()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ProtectiveConductorResistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getNeutralGroundConductorSize <em>Neutral Ground Conductor Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Neutral Ground Conductor Size</em>'.
	 * @see garboard.model.AcOutput#getNeutralGroundConductorSize()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_NeutralGroundConductorSize();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getInsulationResistance <em>Insulation Resistance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Insulation Resistance</em>'.
	 * @see garboard.model.AcOutput#getInsulationResistance()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_InsulationResistance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getInsulationTemperature <em>Insulation Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Insulation Temperature</em>'.
	 * @see garboard.model.AcOutput#getInsulationTemperature()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_InsulationTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getPolarityIndicator <em>Polarity Indicator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Polarity Indicator</em>'.
	 * @see garboard.model.AcOutput#getPolarityIndicator()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_PolarityIndicator();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getPolarityTested <em>Polarity Tested</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Polarity Tested</em>'.
	 * @see garboard.model.AcOutput#getPolarityTested()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_PolarityTested();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getVoltmeter <em>Voltmeter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Voltmeter</em>'.
	 * @see garboard.model.AcOutput#getVoltmeter()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_Voltmeter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getAmmeter <em>Ammeter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ammeter</em>'.
	 * @see garboard.model.AcOutput#getAmmeter()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_Ammeter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getFrequencyMeter <em>Frequency Meter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frequency Meter</em>'.
	 * @see garboard.model.AcOutput#getFrequencyMeter()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_FrequencyMeter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getNamePlateReadable <em>Name Plate Readable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name Plate Readable</em>'.
	 * @see garboard.model.AcOutput#getNamePlateReadable()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_NamePlateReadable();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getEarthedPartsBonded <em>Earthed Parts Bonded</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Earthed Parts Bonded</em>'.
	 * @see garboard.model.AcOutput#getEarthedPartsBonded()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_EarthedPartsBonded();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getGroundDetection <em>Ground Detection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ground Detection</em>'.
	 * @see garboard.model.AcOutput#getGroundDetection()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_GroundDetection();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.AcOutput#getLoads <em>Loads</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Loads</em>'.
	 * @see garboard.model.AcOutput#getLoads()
	 * @see #getAcOutput()
	 * @generated
	 */
	EReference getAcOutput_Loads();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getNoLoadVoltage <em>No Load Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>No Load Voltage</em>'.
	 * @see garboard.model.AcOutput#getNoLoadVoltage()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_NoLoadVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getNoLoadFrequency <em>No Load Frequency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>No Load Frequency</em>'.
	 * @see garboard.model.AcOutput#getNoLoadFrequency()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_NoLoadFrequency();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getLegACurrent <em>Leg ACurrent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leg ACurrent</em>'.
	 * @see garboard.model.AcOutput#getLegACurrent()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_LegACurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getLegBCurrent <em>Leg BCurrent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leg BCurrent</em>'.
	 * @see garboard.model.AcOutput#getLegBCurrent()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_LegBCurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AcOutput#getShoreInletResidualDevice <em>Shore Inlet Residual Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shore Inlet Residual Device</em>'.
	 * @see garboard.model.AcOutput#getShoreInletResidualDevice()
	 * @see #getAcOutput()
	 * @generated
	 */
	EAttribute getAcOutput_ShoreInletResidualDevice();

	/**
	 * Returns the meta object for class '{@link garboard.model.TransferSwitch <em>Transfer Switch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Transfer Switch</em>'.
	 * @see garboard.model.TransferSwitch
	 * @generated
	 */
	EClass getTransferSwitch();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.TransferSwitch#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.TransferSwitch#getKind()
	 * @see #getTransferSwitch()
	 * @generated
	 */
	EAttribute getTransferSwitch_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.TransferSwitch#getPoles <em>Poles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Poles</em>'.
	 * @see garboard.model.TransferSwitch#getPoles()
	 * @see #getTransferSwitch()
	 * @generated
	 */
	EAttribute getTransferSwitch_Poles();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.TransferSwitch#getInterlocked <em>Interlocked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Interlocked</em>'.
	 * @see garboard.model.TransferSwitch#getInterlocked()
	 * @see #getTransferSwitch()
	 * @generated
	 */
	EAttribute getTransferSwitch_Interlocked();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.TransferSwitch#getBackFeedVoltage <em>Back Feed Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Back Feed Voltage</em>'.
	 * @see garboard.model.TransferSwitch#getBackFeedVoltage()
	 * @see #getTransferSwitch()
	 * @generated
	 */
	EAttribute getTransferSwitch_BackFeedVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.TransferSwitch#getTested <em>Tested</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tested</em>'.
	 * @see garboard.model.TransferSwitch#getTested()
	 * @see #getTransferSwitch()
	 * @generated
	 */
	EAttribute getTransferSwitch_Tested();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.TransferSwitch#getRatedCurrent <em>Rated Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Current</em>'.
	 * @see garboard.model.TransferSwitch#getRatedCurrent()
	 * @see #getTransferSwitch()
	 * @generated
	 */
	EAttribute getTransferSwitch_RatedCurrent();

	/**
	 * Returns the meta object for class '{@link garboard.model.ElectricalLoad <em>Electrical Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Electrical Load</em>'.
	 * @see garboard.model.ElectricalLoad
	 * @generated
	 */
	EClass getElectricalLoad();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.ElectricalLoad#getName()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.ElectricalLoad#getKind()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getPower <em>Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power</em>'.
	 * @see garboard.model.ElectricalLoad#getPower()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Power();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getEfficiency <em>Efficiency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Efficiency</em>'.
	 * @see garboard.model.ElectricalLoad#getEfficiency()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Efficiency();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getPowerFactor <em>Power Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power Factor</em>'.
	 * @see garboard.model.ElectricalLoad#getPowerFactor()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_PowerFactor();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getDemandFactor <em>Demand Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Demand Factor</em>'.
	 * @see garboard.model.ElectricalLoad#getDemandFactor()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_DemandFactor();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getGroup <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group</em>'.
	 * @see garboard.model.ElectricalLoad#getGroup()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Group();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getExclusiveWith <em>Exclusive With</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exclusive With</em>'.
	 * @see garboard.model.ElectricalLoad#getExclusiveWith()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_ExclusiveWith();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getPhase <em>Phase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Phase</em>'.
	 * @see garboard.model.ElectricalLoad#getPhase()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Phase();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getMotorHorsepower <em>Motor Horsepower</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Motor Horsepower</em>'.
	 * @see garboard.model.ElectricalLoad#getMotorHorsepower()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_MotorHorsepower();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getCodeLetter <em>Code Letter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code Letter</em>'.
	 * @see garboard.model.ElectricalLoad#getCodeLetter()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_CodeLetter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getLockedRotorCurrent <em>Locked Rotor Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locked Rotor Current</em>'.
	 * @see garboard.model.ElectricalLoad#getLockedRotorCurrent()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_LockedRotorCurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getStarting <em>Starting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Starting</em>'.
	 * @see garboard.model.ElectricalLoad#getStarting()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Starting();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getVoltage <em>Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Voltage</em>'.
	 * @see garboard.model.ElectricalLoad#getVoltage()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Voltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ElectricalLoad#getCondition <em>Condition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Condition</em>'.
	 * @see garboard.model.ElectricalLoad#getCondition()
	 * @see #getElectricalLoad()
	 * @generated
	 */
	EAttribute getElectricalLoad_Condition();

	/**
	 * Returns the meta object for class '{@link garboard.model.AlarmsAndSafety <em>Alarms And Safety</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Alarms And Safety</em>'.
	 * @see garboard.model.AlarmsAndSafety
	 * @generated
	 */
	EClass getAlarmsAndSafety();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.AlarmsAndSafety#getAlarms <em>Alarms</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Alarms</em>'.
	 * @see garboard.model.AlarmsAndSafety#getAlarms()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EReference getAlarmsAndSafety_Alarms();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideInEverySpace <em>Carbon Monoxide In Every Space</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide In Every Space</em>'.
	 * @see garboard.model.AlarmsAndSafety#getCarbonMonoxideInEverySpace()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_CarbonMonoxideInEverySpace();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideMarked <em>Carbon Monoxide Marked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide Marked</em>'.
	 * @see garboard.model.AlarmsAndSafety#getCarbonMonoxideMarked()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_CarbonMonoxideMarked();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideExpiry <em>Carbon Monoxide Expiry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide Expiry</em>'.
	 * @see garboard.model.AlarmsAndSafety#getCarbonMonoxideExpiry()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_CarbonMonoxideExpiry();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideAlwaysPowered <em>Carbon Monoxide Always Powered</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide Always Powered</em>'.
	 * @see garboard.model.AlarmsAndSafety#getCarbonMonoxideAlwaysPowered()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_CarbonMonoxideAlwaysPowered();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getHabitableSpaces <em>Habitable Spaces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Habitable Spaces</em>'.
	 * @see garboard.model.AlarmsAndSafety#getHabitableSpaces()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_HabitableSpaces();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideAlarms <em>Carbon Monoxide Alarms</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide Alarms</em>'.
	 * @see garboard.model.AlarmsAndSafety#getCarbonMonoxideAlarms()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_CarbonMonoxideAlarms();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getVapourDetector <em>Vapour Detector</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vapour Detector</em>'.
	 * @see garboard.model.AlarmsAndSafety#getVapourDetector()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_VapourDetector();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getVapourSensorLow <em>Vapour Sensor Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vapour Sensor Low</em>'.
	 * @see garboard.model.AlarmsAndSafety#getVapourSensorLow()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_VapourSensorLow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getVapourBeforeStart <em>Vapour Before Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vapour Before Start</em>'.
	 * @see garboard.model.AlarmsAndSafety#getVapourBeforeStart()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_VapourBeforeStart();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getFireExtinguisher <em>Fire Extinguisher</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fire Extinguisher</em>'.
	 * @see garboard.model.AlarmsAndSafety#getFireExtinguisher()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_FireExtinguisher();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getFixedFireSystem <em>Fixed Fire System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fixed Fire System</em>'.
	 * @see garboard.model.AlarmsAndSafety#getFixedFireSystem()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_FixedFireSystem();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getFireSystemStopsSet <em>Fire System Stops Set</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fire System Stops Set</em>'.
	 * @see garboard.model.AlarmsAndSafety#getFireSystemStopsSet()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_FireSystemStopsSet();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getFireDischargePort <em>Fire Discharge Port</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fire Discharge Port</em>'.
	 * @see garboard.model.AlarmsAndSafety#getFireDischargePort()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_FireDischargePort();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getRemoteStop <em>Remote Stop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remote Stop</em>'.
	 * @see garboard.model.AlarmsAndSafety#getRemoteStop()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_RemoteStop();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmsAndSafety#getWarningLabels <em>Warning Labels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Warning Labels</em>'.
	 * @see garboard.model.AlarmsAndSafety#getWarningLabels()
	 * @see #getAlarmsAndSafety()
	 * @generated
	 */
	EAttribute getAlarmsAndSafety_WarningLabels();

	/**
	 * Returns the meta object for class '{@link garboard.model.AlarmDevice <em>Alarm Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Alarm Device</em>'.
	 * @see garboard.model.AlarmDevice
	 * @generated
	 */
	EClass getAlarmDevice();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmDevice#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see garboard.model.AlarmDevice#getKind()
	 * @see #getAlarmDevice()
	 * @generated
	 */
	EAttribute getAlarmDevice_Kind();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmDevice#getLocation <em>Location</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Location</em>'.
	 * @see garboard.model.AlarmDevice#getLocation()
	 * @see #getAlarmDevice()
	 * @generated
	 */
	EAttribute getAlarmDevice_Location();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmDevice#getSetting <em>Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Setting</em>'.
	 * @see garboard.model.AlarmDevice#getSetting()
	 * @see #getAlarmDevice()
	 * @generated
	 */
	EAttribute getAlarmDevice_Setting();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmDevice#getTestResult <em>Test Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Test Result</em>'.
	 * @see garboard.model.AlarmDevice#getTestResult()
	 * @see #getAlarmDevice()
	 * @generated
	 */
	EAttribute getAlarmDevice_TestResult();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmDevice#getTestedOn <em>Tested On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tested On</em>'.
	 * @see garboard.model.AlarmDevice#getTestedOn()
	 * @see #getAlarmDevice()
	 * @generated
	 */
	EAttribute getAlarmDevice_TestedOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.AlarmDevice#getExpiresOn <em>Expires On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Expires On</em>'.
	 * @see garboard.model.AlarmDevice#getExpiresOn()
	 * @see #getAlarmDevice()
	 * @generated
	 */
	EAttribute getAlarmDevice_ExpiresOn();

	/**
	 * Returns the meta object for class '{@link garboard.model.InspectionAnswer <em>Inspection Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Inspection Answer</em>'.
	 * @see garboard.model.InspectionAnswer
	 * @generated
	 */
	EClass getInspectionAnswer();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.InspectionAnswer#getQuestion <em>Question</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Question</em>'.
	 * @see garboard.model.InspectionAnswer#getQuestion()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_Question();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.InspectionAnswer#getAnswer <em>Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Answer</em>'.
	 * @see garboard.model.InspectionAnswer#getAnswer()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_Answer();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.InspectionAnswer#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see garboard.model.InspectionAnswer#getNote()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_Note();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.InspectionAnswer#getAnsweredBy <em>Answered By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Answered By</em>'.
	 * @see garboard.model.InspectionAnswer#getAnsweredBy()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_AnsweredBy();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.InspectionAnswer#getAnsweredOn <em>Answered On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Answered On</em>'.
	 * @see garboard.model.InspectionAnswer#getAnsweredOn()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_AnsweredOn();

	/**
	 * Returns the meta object for the reference list '{@link garboard.model.InspectionAnswer#getPhotographs <em>Photographs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Photographs</em>'.
	 * @see garboard.model.InspectionAnswer#getPhotographs()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EReference getInspectionAnswer_Photographs();

	/**
	 * Returns the meta object for class '{@link garboard.model.Trial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Trial</em>'.
	 * @see garboard.model.Trial
	 * @generated
	 */
	EClass getTrial();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see garboard.model.Trial#getDate()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Date();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see garboard.model.Trial#getPlace()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Place();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getLocation <em>Location</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Location</em>'.
	 * @see garboard.model.Trial#getLocation()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Location();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getPeople <em>People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>People</em>'.
	 * @see garboard.model.Trial#getPeople()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_People();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getSeaTemperature <em>Sea Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sea Temperature</em>'.
	 * @see garboard.model.Trial#getSeaTemperature()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_SeaTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getOutsideTemperature <em>Outside Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outside Temperature</em>'.
	 * @see garboard.model.Trial#getOutsideTemperature()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_OutsideTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getBarometricPressure <em>Barometric Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Barometric Pressure</em>'.
	 * @see garboard.model.Trial#getBarometricPressure()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_BarometricPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getRelativeHumidity <em>Relative Humidity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Relative Humidity</em>'.
	 * @see garboard.model.Trial#getRelativeHumidity()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_RelativeHumidity();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getHeadOfWater <em>Head Of Water</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Of Water</em>'.
	 * @see garboard.model.Trial#getHeadOfWater()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_HeadOfWater();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Trial#getProcedure <em>Procedure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Procedure</em>'.
	 * @see garboard.model.Trial#getProcedure()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Procedure();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.Trial#getPriming <em>Priming</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Priming</em>'.
	 * @see garboard.model.Trial#getPriming()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Priming();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Trial#getAttempts <em>Attempts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Attempts</em>'.
	 * @see garboard.model.Trial#getAttempts()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Attempts();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Trial#getLoadSteps <em>Load Steps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Load Steps</em>'.
	 * @see garboard.model.Trial#getLoadSteps()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_LoadSteps();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Trial#getShutdownTests <em>Shutdown Tests</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Shutdown Tests</em>'.
	 * @see garboard.model.Trial#getShutdownTests()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_ShutdownTests();

	/**
	 * Returns the meta object for the containment reference '{@link garboard.model.Trial#getSeaRun <em>Sea Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Sea Run</em>'.
	 * @see garboard.model.Trial#getSeaRun()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_SeaRun();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getCoolantLevelCold <em>Coolant Level Cold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coolant Level Cold</em>'.
	 * @see garboard.model.Trial#getCoolantLevelCold()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_CoolantLevelCold();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getCoolantLevelHot <em>Coolant Level Hot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coolant Level Hot</em>'.
	 * @see garboard.model.Trial#getCoolantLevelHot()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_CoolantLevelHot();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getCoolantLevelColdAgain <em>Coolant Level Cold Again</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coolant Level Cold Again</em>'.
	 * @see garboard.model.Trial#getCoolantLevelColdAgain()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_CoolantLevelColdAgain();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getLeaksCold <em>Leaks Cold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leaks Cold</em>'.
	 * @see garboard.model.Trial#getLeaksCold()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_LeaksCold();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getLeaksHot <em>Leaks Hot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leaks Hot</em>'.
	 * @see garboard.model.Trial#getLeaksHot()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_LeaksHot();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getWaterAtOutletAfter <em>Water At Outlet After</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water At Outlet After</em>'.
	 * @see garboard.model.Trial#getWaterAtOutletAfter()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_WaterAtOutletAfter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getOilPressureAfter <em>Oil Pressure After</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Oil Pressure After</em>'.
	 * @see garboard.model.Trial#getOilPressureAfter()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_OilPressureAfter();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getMufflerLevelChecked <em>Muffler Level Checked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Muffler Level Checked</em>'.
	 * @see garboard.model.Trial#getMufflerLevelChecked()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_MufflerLevelChecked();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getRemarks <em>Remarks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remarks</em>'.
	 * @see garboard.model.Trial#getRemarks()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Remarks();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Trial#getCarbonMonoxideCabin <em>Carbon Monoxide Cabin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide Cabin</em>'.
	 * @see garboard.model.Trial#getCarbonMonoxideCabin()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_CarbonMonoxideCabin();

	/**
	 * Returns the meta object for class '{@link garboard.model.ProcedureStep <em>Procedure Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Procedure Step</em>'.
	 * @see garboard.model.ProcedureStep
	 * @generated
	 */
	EClass getProcedureStep();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ProcedureStep#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see garboard.model.ProcedureStep#getNumber()
	 * @see #getProcedureStep()
	 * @generated
	 */
	EAttribute getProcedureStep_Number();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ProcedureStep#getStep <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Step</em>'.
	 * @see garboard.model.ProcedureStep#getStep()
	 * @see #getProcedureStep()
	 * @generated
	 */
	EAttribute getProcedureStep_Step();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ProcedureStep#getDone <em>Done</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Done</em>'.
	 * @see garboard.model.ProcedureStep#getDone()
	 * @see #getProcedureStep()
	 * @generated
	 */
	EAttribute getProcedureStep_Done();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ProcedureStep#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see garboard.model.ProcedureStep#getAt()
	 * @see #getProcedureStep()
	 * @generated
	 */
	EAttribute getProcedureStep_At();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.ProcedureStep#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see garboard.model.ProcedureStep#getNote()
	 * @see #getProcedureStep()
	 * @generated
	 */
	EAttribute getProcedureStep_Note();

	/**
	 * Returns the meta object for class '{@link garboard.model.FuelPriming <em>Fuel Priming</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fuel Priming</em>'.
	 * @see garboard.model.FuelPriming
	 * @generated
	 */
	EClass getFuelPriming();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getKeyCycles <em>Key Cycles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key Cycles</em>'.
	 * @see garboard.model.FuelPriming#getKeyCycles()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_KeyCycles();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getCycleTime <em>Cycle Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cycle Time</em>'.
	 * @see garboard.model.FuelPriming#getCycleTime()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_CycleTime();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getFeedPressure <em>Feed Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feed Pressure</em>'.
	 * @see garboard.model.FuelPriming#getFeedPressure()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_FeedPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getRailPressure <em>Rail Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rail Pressure</em>'.
	 * @see garboard.model.FuelPriming#getRailPressure()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_RailPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getHeldFor <em>Held For</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Held For</em>'.
	 * @see garboard.model.FuelPriming#getHeldFor()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_HeldFor();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getBubblesGone <em>Bubbles Gone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bubbles Gone</em>'.
	 * @see garboard.model.FuelPriming#getBubblesGone()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_BubblesGone();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.FuelPriming#getLeaks <em>Leaks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leaks</em>'.
	 * @see garboard.model.FuelPriming#getLeaks()
	 * @see #getFuelPriming()
	 * @generated
	 */
	EAttribute getFuelPriming_Leaks();

	/**
	 * Returns the meta object for class '{@link garboard.model.CrankingAttempt <em>Cranking Attempt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cranking Attempt</em>'.
	 * @see garboard.model.CrankingAttempt
	 * @generated
	 */
	EClass getCrankingAttempt();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see garboard.model.CrankingAttempt#getAt()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_At();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getDuration <em>Duration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Duration</em>'.
	 * @see garboard.model.CrankingAttempt#getDuration()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_Duration();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getRest <em>Rest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rest</em>'.
	 * @see garboard.model.CrankingAttempt#getRest()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_Rest();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getSeacock <em>Seacock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seacock</em>'.
	 * @see garboard.model.CrankingAttempt#getSeacock()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_Seacock();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getFired <em>Fired</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fired</em>'.
	 * @see garboard.model.CrankingAttempt#getFired()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_Fired();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getLowestVoltage <em>Lowest Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lowest Voltage</em>'.
	 * @see garboard.model.CrankingAttempt#getLowestVoltage()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_LowestVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.CrankingAttempt#getMufflerDrained <em>Muffler Drained</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Muffler Drained</em>'.
	 * @see garboard.model.CrankingAttempt#getMufflerDrained()
	 * @see #getCrankingAttempt()
	 * @generated
	 */
	EAttribute getCrankingAttempt_MufflerDrained();

	/**
	 * Returns the meta object for class '{@link garboard.model.LoadStep <em>Load Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Load Step</em>'.
	 * @see garboard.model.LoadStep
	 * @generated
	 */
	EClass getLoadStep();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.LoadStep#getLoad <em>Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Load</em>'.
	 * @see garboard.model.LoadStep#getLoad()
	 * @see #getLoadStep()
	 * @generated
	 */
	EAttribute getLoadStep_Load();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.LoadStep#getDwell <em>Dwell</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dwell</em>'.
	 * @see garboard.model.LoadStep#getDwell()
	 * @see #getLoadStep()
	 * @generated
	 */
	EAttribute getLoadStep_Dwell();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.LoadStep#getReadings <em>Readings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Readings</em>'.
	 * @see garboard.model.LoadStep#getReadings()
	 * @see #getLoadStep()
	 * @generated
	 */
	EReference getLoadStep_Readings();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.LoadStep#getRemarks <em>Remarks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remarks</em>'.
	 * @see garboard.model.LoadStep#getRemarks()
	 * @see #getLoadStep()
	 * @generated
	 */
	EAttribute getLoadStep_Remarks();

	/**
	 * Returns the meta object for class '{@link garboard.model.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reading</em>'.
	 * @see garboard.model.Reading
	 * @generated
	 */
	EClass getReading();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see garboard.model.Reading#getAt()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_At();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getVoltage1 <em>Voltage1</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Voltage1</em>'.
	 * @see garboard.model.Reading#getVoltage1()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Voltage1();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getVoltage2 <em>Voltage2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Voltage2</em>'.
	 * @see garboard.model.Reading#getVoltage2()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Voltage2();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getVoltage3 <em>Voltage3</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Voltage3</em>'.
	 * @see garboard.model.Reading#getVoltage3()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Voltage3();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCurrent1 <em>Current1</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current1</em>'.
	 * @see garboard.model.Reading#getCurrent1()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Current1();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCurrent2 <em>Current2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current2</em>'.
	 * @see garboard.model.Reading#getCurrent2()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Current2();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCurrent3 <em>Current3</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current3</em>'.
	 * @see garboard.model.Reading#getCurrent3()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Current3();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getFrequency <em>Frequency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frequency</em>'.
	 * @see garboard.model.Reading#getFrequency()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Frequency();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getPower <em>Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power</em>'.
	 * @see garboard.model.Reading#getPower()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Power();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getPowerFactor <em>Power Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power Factor</em>'.
	 * @see garboard.model.Reading#getPowerFactor()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_PowerFactor();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getOilPressure <em>Oil Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Oil Pressure</em>'.
	 * @see garboard.model.Reading#getOilPressure()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_OilPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCoolantTemperature <em>Coolant Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coolant Temperature</em>'.
	 * @see garboard.model.Reading#getCoolantTemperature()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_CoolantTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getRawWaterIn <em>Raw Water In</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Raw Water In</em>'.
	 * @see garboard.model.Reading#getRawWaterIn()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_RawWaterIn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getRawWaterOut <em>Raw Water Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Raw Water Out</em>'.
	 * @see garboard.model.Reading#getRawWaterOut()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_RawWaterOut();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getExhaustMixed <em>Exhaust Mixed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exhaust Mixed</em>'.
	 * @see garboard.model.Reading#getExhaustMixed()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_ExhaustMixed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getExhaustDry <em>Exhaust Dry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exhaust Dry</em>'.
	 * @see garboard.model.Reading#getExhaustDry()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_ExhaustDry();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getBackPressure <em>Back Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Back Pressure</em>'.
	 * @see garboard.model.Reading#getBackPressure()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_BackPressure();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCompartmentTemperature <em>Compartment Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Compartment Temperature</em>'.
	 * @see garboard.model.Reading#getCompartmentTemperature()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_CompartmentTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getOutsideTemperature <em>Outside Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outside Temperature</em>'.
	 * @see garboard.model.Reading#getOutsideTemperature()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_OutsideTemperature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCompartmentDepression <em>Compartment Depression</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Compartment Depression</em>'.
	 * @see garboard.model.Reading#getCompartmentDepression()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_CompartmentDepression();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getFuelVacuum <em>Fuel Vacuum</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fuel Vacuum</em>'.
	 * @see garboard.model.Reading#getFuelVacuum()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_FuelVacuum();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getRawWaterVacuum <em>Raw Water Vacuum</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Raw Water Vacuum</em>'.
	 * @see garboard.model.Reading#getRawWaterVacuum()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_RawWaterVacuum();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getRawWaterFlow <em>Raw Water Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Raw Water Flow</em>'.
	 * @see garboard.model.Reading#getRawWaterFlow()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_RawWaterFlow();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getBatteryVoltage <em>Battery Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Battery Voltage</em>'.
	 * @see garboard.model.Reading#getBatteryVoltage()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_BatteryVoltage();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getChargeCurrent <em>Charge Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Charge Current</em>'.
	 * @see garboard.model.Reading#getChargeCurrent()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_ChargeCurrent();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getCarbonMonoxide <em>Carbon Monoxide</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carbon Monoxide</em>'.
	 * @see garboard.model.Reading#getCarbonMonoxide()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_CarbonMonoxide();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getSmoke <em>Smoke</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Smoke</em>'.
	 * @see garboard.model.Reading#getSmoke()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Smoke();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see garboard.model.Reading#getNote()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Note();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Reading#getInstruments <em>Instruments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Instruments</em>'.
	 * @see garboard.model.Reading#getInstruments()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Instruments();

	/**
	 * Returns the meta object for class '{@link garboard.model.SeaRun <em>Sea Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sea Run</em>'.
	 * @see garboard.model.SeaRun
	 * @generated
	 */
	EClass getSeaRun();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see garboard.model.SeaRun#getDate()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_Date();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getHeelPort <em>Heel Port</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heel Port</em>'.
	 * @see garboard.model.SeaRun#getHeelPort()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_HeelPort();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getHeelStarboard <em>Heel Starboard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heel Starboard</em>'.
	 * @see garboard.model.SeaRun#getHeelStarboard()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_HeelStarboard();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getTrimUp <em>Trim Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trim Up</em>'.
	 * @see garboard.model.SeaRun#getTrimUp()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_TrimUp();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getTrimDown <em>Trim Down</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trim Down</em>'.
	 * @see garboard.model.SeaRun#getTrimDown()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_TrimDown();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getSpeed <em>Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Speed</em>'.
	 * @see garboard.model.SeaRun#getSpeed()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_Speed();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getWaterFlowing <em>Water Flowing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Flowing</em>'.
	 * @see garboard.model.SeaRun#getWaterFlowing()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_WaterFlowing();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getWaterOverCrest <em>Water Over Crest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Over Crest</em>'.
	 * @see garboard.model.SeaRun#getWaterOverCrest()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_WaterOverCrest();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getWaterInMuffler <em>Water In Muffler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water In Muffler</em>'.
	 * @see garboard.model.SeaRun#getWaterInMuffler()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_WaterInMuffler();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getDifference <em>Difference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Difference</em>'.
	 * @see garboard.model.SeaRun#getDifference()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_Difference();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.SeaRun#getDuration <em>Duration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Duration</em>'.
	 * @see garboard.model.SeaRun#getDuration()
	 * @see #getSeaRun()
	 * @generated
	 */
	EAttribute getSeaRun_Duration();

	/**
	 * Returns the meta object for class '{@link garboard.model.Upkeep <em>Upkeep</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Upkeep</em>'.
	 * @see garboard.model.Upkeep
	 * @generated
	 */
	EClass getUpkeep();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Upkeep#getTasks <em>Tasks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Tasks</em>'.
	 * @see garboard.model.Upkeep#getTasks()
	 * @see #getUpkeep()
	 * @generated
	 */
	EReference getUpkeep_Tasks();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Upkeep#getConsumables <em>Consumables</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Consumables</em>'.
	 * @see garboard.model.Upkeep#getConsumables()
	 * @see #getUpkeep()
	 * @generated
	 */
	EReference getUpkeep_Consumables();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Upkeep#getAnnualHours <em>Annual Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Annual Hours</em>'.
	 * @see garboard.model.Upkeep#getAnnualHours()
	 * @see #getUpkeep()
	 * @generated
	 */
	EAttribute getUpkeep_AnnualHours();

	/**
	 * Returns the meta object for class '{@link garboard.model.UpkeepTask <em>Upkeep Task</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Upkeep Task</em>'.
	 * @see garboard.model.UpkeepTask
	 * @generated
	 */
	EClass getUpkeepTask();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UpkeepTask#getTask <em>Task</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Task</em>'.
	 * @see garboard.model.UpkeepTask#getTask()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Task();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UpkeepTask#getEveryHours <em>Every Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Every Hours</em>'.
	 * @see garboard.model.UpkeepTask#getEveryHours()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_EveryHours();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UpkeepTask#getEveryMonths <em>Every Months</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Every Months</em>'.
	 * @see garboard.model.UpkeepTask#getEveryMonths()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_EveryMonths();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UpkeepTask#getLastDoneOn <em>Last Done On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Done On</em>'.
	 * @see garboard.model.UpkeepTask#getLastDoneOn()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_LastDoneOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UpkeepTask#getLastDoneHours <em>Last Done Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Done Hours</em>'.
	 * @see garboard.model.UpkeepTask#getLastDoneHours()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_LastDoneHours();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UpkeepTask#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see garboard.model.UpkeepTask#getNote()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Note();

	/**
	 * Returns the meta object for class '{@link garboard.model.Consumable <em>Consumable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Consumable</em>'.
	 * @see garboard.model.Consumable
	 * @generated
	 */
	EClass getConsumable();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Consumable#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.Consumable#getName()
	 * @see #getConsumable()
	 * @generated
	 */
	EAttribute getConsumable_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Consumable#getPartNumber <em>Part Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part Number</em>'.
	 * @see garboard.model.Consumable#getPartNumber()
	 * @see #getConsumable()
	 * @generated
	 */
	EAttribute getConsumable_PartNumber();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Consumable#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see garboard.model.Consumable#getQuantity()
	 * @see #getConsumable()
	 * @generated
	 */
	EAttribute getConsumable_Quantity();

	/**
	 * Returns the meta object for class '{@link garboard.model.Acceptance <em>Acceptance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Acceptance</em>'.
	 * @see garboard.model.Acceptance
	 * @generated
	 */
	EClass getAcceptance();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Acceptance#getCheck <em>Check</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Check</em>'.
	 * @see garboard.model.Acceptance#getCheck()
	 * @see #getAcceptance()
	 * @generated
	 */
	EAttribute getAcceptance_Check();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Acceptance#getSubject <em>Subject</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Subject</em>'.
	 * @see garboard.model.Acceptance#getSubject()
	 * @see #getAcceptance()
	 * @generated
	 */
	EAttribute getAcceptance_Subject();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Acceptance#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see garboard.model.Acceptance#getReason()
	 * @see #getAcceptance()
	 * @generated
	 */
	EAttribute getAcceptance_Reason();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Acceptance#getAcceptedBy <em>Accepted By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Accepted By</em>'.
	 * @see garboard.model.Acceptance#getAcceptedBy()
	 * @see #getAcceptance()
	 * @generated
	 */
	EAttribute getAcceptance_AcceptedBy();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Acceptance#getAcceptedOn <em>Accepted On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Accepted On</em>'.
	 * @see garboard.model.Acceptance#getAcceptedOn()
	 * @see #getAcceptance()
	 * @generated
	 */
	EAttribute getAcceptance_AcceptedOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Acceptance#getUntil <em>Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Until</em>'.
	 * @see garboard.model.Acceptance#getUntil()
	 * @see #getAcceptance()
	 * @generated
	 */
	EAttribute getAcceptance_Until();

	/**
	 * Returns the meta object for class '{@link garboard.model.Signature <em>Signature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Signature</em>'.
	 * @see garboard.model.Signature
	 * @generated
	 */
	EClass getSignature();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Signature#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see garboard.model.Signature#getRole()
	 * @see #getSignature()
	 * @generated
	 */
	EAttribute getSignature_Role();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Signature#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see garboard.model.Signature#getName()
	 * @see #getSignature()
	 * @generated
	 */
	EAttribute getSignature_Name();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Signature#getLicence <em>Licence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Licence</em>'.
	 * @see garboard.model.Signature#getLicence()
	 * @see #getSignature()
	 * @generated
	 */
	EAttribute getSignature_Licence();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Signature#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see garboard.model.Signature#getPlace()
	 * @see #getSignature()
	 * @generated
	 */
	EAttribute getSignature_Place();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Signature#getSignedOn <em>Signed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Signed On</em>'.
	 * @see garboard.model.Signature#getSignedOn()
	 * @see #getSignature()
	 * @generated
	 */
	EAttribute getSignature_SignedOn();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.Signature#getStatement <em>Statement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Statement</em>'.
	 * @see garboard.model.Signature#getStatement()
	 * @see #getSignature()
	 * @generated
	 */
	EAttribute getSignature_Statement();

	/**
	 * Returns the meta object for the containment reference list '{@link garboard.model.Signature#getVerdicts <em>Verdicts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Verdicts</em>'.
	 * @see garboard.model.Signature#getVerdicts()
	 * @see #getSignature()
	 * @generated
	 */
	EReference getSignature_Verdicts();

	/**
	 * Returns the meta object for class '{@link garboard.model.UnreadEntry <em>Unread Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Unread Entry</em>'.
	 * @see garboard.model.UnreadEntry
	 * @generated
	 */
	EClass getUnreadEntry();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UnreadEntry#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see garboard.model.UnreadEntry#getPlace()
	 * @see #getUnreadEntry()
	 * @generated
	 */
	EAttribute getUnreadEntry_Place();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.UnreadEntry#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see garboard.model.UnreadEntry#getText()
	 * @see #getUnreadEntry()
	 * @generated
	 */
	EAttribute getUnreadEntry_Text();

	/**
	 * Returns the meta object for class '{@link garboard.model.StoredVerdict <em>Stored Verdict</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stored Verdict</em>'.
	 * @see garboard.model.StoredVerdict
	 * @generated
	 */
	EClass getStoredVerdict();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StoredVerdict#getCheck <em>Check</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Check</em>'.
	 * @see garboard.model.StoredVerdict#getCheck()
	 * @see #getStoredVerdict()
	 * @generated
	 */
	EAttribute getStoredVerdict_Check();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StoredVerdict#getSubject <em>Subject</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Subject</em>'.
	 * @see garboard.model.StoredVerdict#getSubject()
	 * @see #getStoredVerdict()
	 * @generated
	 */
	EAttribute getStoredVerdict_Subject();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StoredVerdict#getStanding <em>Standing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Standing</em>'.
	 * @see garboard.model.StoredVerdict#getStanding()
	 * @see #getStoredVerdict()
	 * @generated
	 */
	EAttribute getStoredVerdict_Standing();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StoredVerdict#getMeasured <em>Measured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured</em>'.
	 * @see garboard.model.StoredVerdict#getMeasured()
	 * @see #getStoredVerdict()
	 * @generated
	 */
	EAttribute getStoredVerdict_Measured();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StoredVerdict#getLimit <em>Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limit</em>'.
	 * @see garboard.model.StoredVerdict#getLimit()
	 * @see #getStoredVerdict()
	 * @generated
	 */
	EAttribute getStoredVerdict_Limit();

	/**
	 * Returns the meta object for the attribute '{@link garboard.model.StoredVerdict#getMargin <em>Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin</em>'.
	 * @see garboard.model.StoredVerdict#getMargin()
	 * @see #getStoredVerdict()
	 * @generated
	 */
	EAttribute getStoredVerdict_Margin();

	/**
	 * Returns the meta object for enum '{@link garboard.model.Answer <em>Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Answer</em>'.
	 * @see garboard.model.Answer
	 * @generated
	 */
	EEnum getAnswer();

	/**
	 * Returns the meta object for enum '{@link garboard.model.PartyRole <em>Party Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Party Role</em>'.
	 * @see garboard.model.PartyRole
	 * @generated
	 */
	EEnum getPartyRole();

	/**
	 * Returns the meta object for enum '{@link garboard.model.HullKind <em>Hull Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hull Kind</em>'.
	 * @see garboard.model.HullKind
	 * @generated
	 */
	EEnum getHullKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.HullMaterial <em>Hull Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hull Material</em>'.
	 * @see garboard.model.HullMaterial
	 * @generated
	 */
	EEnum getHullMaterial();

	/**
	 * Returns the meta object for enum '{@link garboard.model.VesselService <em>Vessel Service</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Vessel Service</em>'.
	 * @see garboard.model.VesselService
	 * @generated
	 */
	EEnum getVesselService();

	/**
	 * Returns the meta object for enum '{@link garboard.model.FuelKind <em>Fuel Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fuel Kind</em>'.
	 * @see garboard.model.FuelKind
	 * @generated
	 */
	EEnum getFuelKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.Aspiration <em>Aspiration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Aspiration</em>'.
	 * @see garboard.model.Aspiration
	 * @generated
	 */
	EEnum getAspiration();

	/**
	 * Returns the meta object for enum '{@link garboard.model.FuelSystem <em>Fuel System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fuel System</em>'.
	 * @see garboard.model.FuelSystem
	 * @generated
	 */
	EEnum getFuelSystem();

	/**
	 * Returns the meta object for enum '{@link garboard.model.Cooling <em>Cooling</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cooling</em>'.
	 * @see garboard.model.Cooling
	 * @generated
	 */
	EEnum getCooling();

	/**
	 * Returns the meta object for enum '{@link garboard.model.PhaseSystem <em>Phase System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Phase System</em>'.
	 * @see garboard.model.PhaseSystem
	 * @generated
	 */
	EEnum getPhaseSystem();

	/**
	 * Returns the meta object for enum '{@link garboard.model.DutyRating <em>Duty Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Duty Rating</em>'.
	 * @see garboard.model.DutyRating
	 * @generated
	 */
	EEnum getDutyRating();

	/**
	 * Returns the meta object for enum '{@link garboard.model.PerformanceClass <em>Performance Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Performance Class</em>'.
	 * @see garboard.model.PerformanceClass
	 * @generated
	 */
	EEnum getPerformanceClass();

	/**
	 * Returns the meta object for enum '{@link garboard.model.BatteryChemistry <em>Battery Chemistry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Battery Chemistry</em>'.
	 * @see garboard.model.BatteryChemistry
	 * @generated
	 */
	EEnum getBatteryChemistry();

	/**
	 * Returns the meta object for enum '{@link garboard.model.CrankingRatingDefinition <em>Cranking Rating Definition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cranking Rating Definition</em>'.
	 * @see garboard.model.CrankingRatingDefinition
	 * @generated
	 */
	EEnum getCrankingRatingDefinition();

	/**
	 * Returns the meta object for enum '{@link garboard.model.TerminalKind <em>Terminal Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Terminal Kind</em>'.
	 * @see garboard.model.TerminalKind
	 * @generated
	 */
	EEnum getTerminalKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.CableFunction <em>Cable Function</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cable Function</em>'.
	 * @see garboard.model.CableFunction
	 * @generated
	 */
	EEnum getCableFunction();

	/**
	 * Returns the meta object for enum '{@link garboard.model.StrandClass <em>Strand Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Strand Class</em>'.
	 * @see garboard.model.StrandClass
	 * @generated
	 */
	EEnum getStrandClass();

	/**
	 * Returns the meta object for enum '{@link garboard.model.InsulationRating <em>Insulation Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Insulation Rating</em>'.
	 * @see garboard.model.InsulationRating
	 * @generated
	 */
	EEnum getInsulationRating();

	/**
	 * Returns the meta object for enum '{@link garboard.model.ProtectionKind <em>Protection Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Protection Kind</em>'.
	 * @see garboard.model.ProtectionKind
	 * @generated
	 */
	EEnum getProtectionKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.TankMaterial <em>Tank Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tank Material</em>'.
	 * @see garboard.model.TankMaterial
	 * @generated
	 */
	EEnum getTankMaterial();

	/**
	 * Returns the meta object for enum '{@link garboard.model.FuelLineFunction <em>Fuel Line Function</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fuel Line Function</em>'.
	 * @see garboard.model.FuelLineFunction
	 * @generated
	 */
	EEnum getFuelLineFunction();

	/**
	 * Returns the meta object for enum '{@link garboard.model.FuelLineKind <em>Fuel Line Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fuel Line Kind</em>'.
	 * @see garboard.model.FuelLineKind
	 * @generated
	 */
	EEnum getFuelLineKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.BowlKind <em>Bowl Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bowl Kind</em>'.
	 * @see garboard.model.BowlKind
	 * @generated
	 */
	EEnum getBowlKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.AntiSiphonProtection <em>Anti Siphon Protection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Anti Siphon Protection</em>'.
	 * @see garboard.model.AntiSiphonProtection
	 * @generated
	 */
	EEnum getAntiSiphonProtection();

	/**
	 * Returns the meta object for enum '{@link garboard.model.StrainerPickUp <em>Strainer Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Strainer Pick Up</em>'.
	 * @see garboard.model.StrainerPickUp
	 * @generated
	 */
	EEnum getStrainerPickUp();

	/**
	 * Returns the meta object for enum '{@link garboard.model.ValveKind <em>Valve Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Valve Kind</em>'.
	 * @see garboard.model.ValveKind
	 * @generated
	 */
	EEnum getValveKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.FittingMaterial <em>Fitting Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fitting Material</em>'.
	 * @see garboard.model.FittingMaterial
	 * @generated
	 */
	EEnum getFittingMaterial();

	/**
	 * Returns the meta object for enum '{@link garboard.model.WaterHoseKind <em>Water Hose Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Water Hose Kind</em>'.
	 * @see garboard.model.WaterHoseKind
	 * @generated
	 */
	EEnum getWaterHoseKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.WaterSection <em>Water Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Water Section</em>'.
	 * @see garboard.model.WaterSection
	 * @generated
	 */
	EEnum getWaterSection();

	/**
	 * Returns the meta object for enum '{@link garboard.model.PipeFittingKind <em>Pipe Fitting Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pipe Fitting Kind</em>'.
	 * @see garboard.model.PipeFittingKind
	 * @generated
	 */
	EEnum getPipeFittingKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.SiphonBreakKind <em>Siphon Break Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Siphon Break Kind</em>'.
	 * @see garboard.model.SiphonBreakKind
	 * @generated
	 */
	EEnum getSiphonBreakKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.SiphonBreakPlace <em>Siphon Break Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Siphon Break Place</em>'.
	 * @see garboard.model.SiphonBreakPlace
	 * @generated
	 */
	EEnum getSiphonBreakPlace();

	/**
	 * Returns the meta object for enum '{@link garboard.model.VentHoseEnd <em>Vent Hose End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Vent Hose End</em>'.
	 * @see garboard.model.VentHoseEnd
	 * @generated
	 */
	EEnum getVentHoseEnd();

	/**
	 * Returns the meta object for enum '{@link garboard.model.ExhaustSection <em>Exhaust Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Exhaust Section</em>'.
	 * @see garboard.model.ExhaustSection
	 * @generated
	 */
	EEnum getExhaustSection();

	/**
	 * Returns the meta object for enum '{@link garboard.model.ExhaustHoseStandard <em>Exhaust Hose Standard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Exhaust Hose Standard</em>'.
	 * @see garboard.model.ExhaustHoseStandard
	 * @generated
	 */
	EEnum getExhaustHoseStandard();

	/**
	 * Returns the meta object for enum '{@link garboard.model.ExhaustBendKind <em>Exhaust Bend Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Exhaust Bend Kind</em>'.
	 * @see garboard.model.ExhaustBendKind
	 * @generated
	 */
	EEnum getExhaustBendKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.MufflerKind <em>Muffler Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Muffler Kind</em>'.
	 * @see garboard.model.MufflerKind
	 * @generated
	 */
	EEnum getMufflerKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.OutletPlace <em>Outlet Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Outlet Place</em>'.
	 * @see garboard.model.OutletPlace
	 * @generated
	 */
	EEnum getOutletPlace();

	/**
	 * Returns the meta object for enum '{@link garboard.model.AntiSurge <em>Anti Surge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Anti Surge</em>'.
	 * @see garboard.model.AntiSurge
	 * @generated
	 */
	EEnum getAntiSurge();

	/**
	 * Returns the meta object for enum '{@link garboard.model.DuctFunction <em>Duct Function</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Duct Function</em>'.
	 * @see garboard.model.DuctFunction
	 * @generated
	 */
	EEnum getDuctFunction();

	/**
	 * Returns the meta object for enum '{@link garboard.model.NeutralBond <em>Neutral Bond</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Neutral Bond</em>'.
	 * @see garboard.model.NeutralBond
	 * @generated
	 */
	EEnum getNeutralBond();

	/**
	 * Returns the meta object for enum '{@link garboard.model.TransferKind <em>Transfer Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Transfer Kind</em>'.
	 * @see garboard.model.TransferKind
	 * @generated
	 */
	EEnum getTransferKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.PolesSwitched <em>Poles Switched</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Poles Switched</em>'.
	 * @see garboard.model.PolesSwitched
	 * @generated
	 */
	EEnum getPolesSwitched();

	/**
	 * Returns the meta object for enum '{@link garboard.model.TripCurve <em>Trip Curve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Trip Curve</em>'.
	 * @see garboard.model.TripCurve
	 * @generated
	 */
	EEnum getTripCurve();

	/**
	 * Returns the meta object for enum '{@link garboard.model.LoadKind <em>Load Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Load Kind</em>'.
	 * @see garboard.model.LoadKind
	 * @generated
	 */
	EEnum getLoadKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.MotorStarting <em>Motor Starting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Motor Starting</em>'.
	 * @see garboard.model.MotorStarting
	 * @generated
	 */
	EEnum getMotorStarting();

	/**
	 * Returns the meta object for enum '{@link garboard.model.AlarmKind <em>Alarm Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Alarm Kind</em>'.
	 * @see garboard.model.AlarmKind
	 * @generated
	 */
	EEnum getAlarmKind();

	/**
	 * Returns the meta object for enum '{@link garboard.model.TestResult <em>Test Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Test Result</em>'.
	 * @see garboard.model.TestResult
	 * @generated
	 */
	EEnum getTestResult();

	/**
	 * Returns the meta object for enum '{@link garboard.model.SeacockState <em>Seacock State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Seacock State</em>'.
	 * @see garboard.model.SeacockState
	 * @generated
	 */
	EEnum getSeacockState();

	/**
	 * Returns the meta object for enum '{@link garboard.model.TrialPlace <em>Trial Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Trial Place</em>'.
	 * @see garboard.model.TrialPlace
	 * @generated
	 */
	EEnum getTrialPlace();

	/**
	 * Returns the meta object for enum '{@link garboard.model.SignatureRole <em>Signature Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Signature Role</em>'.
	 * @see garboard.model.SignatureRole
	 * @generated
	 */
	EEnum getSignatureRole();

	/**
	 * Returns the meta object for enum '{@link garboard.model.SmokeColour <em>Smoke Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Smoke Colour</em>'.
	 * @see garboard.model.SmokeColour
	 * @generated
	 */
	EEnum getSmokeColour();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Length <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Length</em>'.
	 * @see garboard.quantity.Length
	 * @generated
	 */
	EDataType getLength();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Area <em>Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Area</em>'.
	 * @see garboard.quantity.Area
	 * @generated
	 */
	EDataType getArea();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Volume <em>Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Volume</em>'.
	 * @see garboard.quantity.Volume
	 * @generated
	 */
	EDataType getVolume();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Mass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Mass</em>'.
	 * @see garboard.quantity.Mass
	 * @generated
	 */
	EDataType getMass();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Angle <em>Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Angle</em>'.
	 * @see garboard.quantity.Angle
	 * @generated
	 */
	EDataType getAngle();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Slope <em>Slope</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Slope</em>'.
	 * @see garboard.quantity.Slope
	 * @generated
	 */
	EDataType getSlope();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Speed <em>Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Speed</em>'.
	 * @see garboard.quantity.Speed
	 * @generated
	 */
	EDataType getSpeed();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.TimeSpan <em>Time Span</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Time Span</em>'.
	 * @see garboard.quantity.TimeSpan
	 * @generated
	 */
	EDataType getTimeSpan();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Frequency <em>Frequency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Frequency</em>'.
	 * @see garboard.quantity.Frequency
	 * @generated
	 */
	EDataType getFrequency();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.RotationalSpeed <em>Rotational Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Rotational Speed</em>'.
	 * @see garboard.quantity.RotationalSpeed
	 * @generated
	 */
	EDataType getRotationalSpeed();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.AbsolutePressure <em>Absolute Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Absolute Pressure</em>'.
	 * @see garboard.quantity.AbsolutePressure
	 * @generated
	 */
	EDataType getAbsolutePressure();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.GaugePressure <em>Gauge Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Gauge Pressure</em>'.
	 * @see garboard.quantity.GaugePressure
	 * @generated
	 */
	EDataType getGaugePressure();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.PressureDifference <em>Pressure Difference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Pressure Difference</em>'.
	 * @see garboard.quantity.PressureDifference
	 * @generated
	 */
	EDataType getPressureDifference();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Temperature <em>Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Temperature</em>'.
	 * @see garboard.quantity.Temperature
	 * @generated
	 */
	EDataType getTemperature();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.TemperatureDifference <em>Temperature Difference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Temperature Difference</em>'.
	 * @see garboard.quantity.TemperatureDifference
	 * @generated
	 */
	EDataType getTemperatureDifference();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.VolumeFlow <em>Volume Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Volume Flow</em>'.
	 * @see garboard.quantity.VolumeFlow
	 * @generated
	 */
	EDataType getVolumeFlow();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.MassFlow <em>Mass Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Mass Flow</em>'.
	 * @see garboard.quantity.MassFlow
	 * @generated
	 */
	EDataType getMassFlow();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Power <em>Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Power</em>'.
	 * @see garboard.quantity.Power
	 * @generated
	 */
	EDataType getPower();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.ApparentPower <em>Apparent Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Apparent Power</em>'.
	 * @see garboard.quantity.ApparentPower
	 * @generated
	 */
	EDataType getApparentPower();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Voltage <em>Voltage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Voltage</em>'.
	 * @see garboard.quantity.Voltage
	 * @generated
	 */
	EDataType getVoltage();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Current <em>Current</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Current</em>'.
	 * @see garboard.quantity.Current
	 * @generated
	 */
	EDataType getCurrent();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Resistance <em>Resistance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Resistance</em>'.
	 * @see garboard.quantity.Resistance
	 * @generated
	 */
	EDataType getResistance();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Charge <em>Charge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Charge</em>'.
	 * @see garboard.quantity.Charge
	 * @generated
	 */
	EDataType getCharge();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.SpecificConsumption <em>Specific Consumption</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Specific Consumption</em>'.
	 * @see garboard.quantity.SpecificConsumption
	 * @generated
	 */
	EDataType getSpecificConsumption();

	/**
	 * Returns the meta object for data type '{@link garboard.quantity.Ratio <em>Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Ratio</em>'.
	 * @see garboard.quantity.Ratio
	 * @generated
	 */
	EDataType getRatio();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Date</em>'.
	 * @see java.time.LocalDate
	 * @generated
	 */
	EDataType getDate();

	/**
	 * Returns the meta object for data type '{@link java.time.OffsetDateTime <em>Date Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Date Time</em>'.
	 * @see java.time.OffsetDateTime
	 * @generated
	 */
	EDataType getDateTime();

	/**
	 * Returns the meta object for data type '{@link java.lang.String <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Text</em>'.
	 * @see java.lang.String
	 * @generated
	 */
	EDataType getText();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	GarboardFactory getGarboardFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link garboard.model.impl.ItemImpl <em>Item</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ItemImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getItem()
		 * @generated
		 */
		EClass ITEM = eINSTANCE.getItem();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ITEM__ID = eINSTANCE.getItem_Id();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.PointImpl <em>Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.PointImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getPoint()
		 * @generated
		 */
		EClass POINT = eINSTANCE.getPoint();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POINT__X = eINSTANCE.getPoint_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POINT__Y = eINSTANCE.getPoint_Y();

		/**
		 * The meta object literal for the '<em><b>Z</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POINT__Z = eINSTANCE.getPoint_Z();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.CommissioningRecordImpl <em>Commissioning Record</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.CommissioningRecordImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getCommissioningRecord()
		 * @generated
		 */
		EClass COMMISSIONING_RECORD = eINSTANCE.getCommissioningRecord();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSIONING_RECORD__FORMAT_VERSION = eINSTANCE.getCommissioningRecord_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Record Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSIONING_RECORD__RECORD_NUMBER = eINSTANCE.getCommissioningRecord_RecordNumber();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSIONING_RECORD__TITLE = eINSTANCE.getCommissioningRecord_Title();

		/**
		 * The meta object literal for the '<em><b>Created On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSIONING_RECORD__CREATED_ON = eINSTANCE.getCommissioningRecord_CreatedOn();

		/**
		 * The meta object literal for the '<em><b>Practices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSIONING_RECORD__PRACTICES = eINSTANCE.getCommissioningRecord_Practices();

		/**
		 * The meta object literal for the '<em><b>Remarks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSIONING_RECORD__REMARKS = eINSTANCE.getCommissioningRecord_Remarks();

		/**
		 * The meta object literal for the '<em><b>Instruments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__INSTRUMENTS = eINSTANCE.getCommissioningRecord_Instruments();

		/**
		 * The meta object literal for the '<em><b>Parties</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__PARTIES = eINSTANCE.getCommissioningRecord_Parties();

		/**
		 * The meta object literal for the '<em><b>Vessel</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__VESSEL = eINSTANCE.getCommissioningRecord_Vessel();

		/**
		 * The meta object literal for the '<em><b>Generator Set</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__GENERATOR_SET = eINSTANCE.getCommissioningRecord_GeneratorSet();

		/**
		 * The meta object literal for the '<em><b>Starting Battery</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__STARTING_BATTERY = eINSTANCE.getCommissioningRecord_StartingBattery();

		/**
		 * The meta object literal for the '<em><b>Fuel Supply</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__FUEL_SUPPLY = eINSTANCE.getCommissioningRecord_FuelSupply();

		/**
		 * The meta object literal for the '<em><b>Raw Water</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__RAW_WATER = eINSTANCE.getCommissioningRecord_RawWater();

		/**
		 * The meta object literal for the '<em><b>Exhaust</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__EXHAUST = eINSTANCE.getCommissioningRecord_Exhaust();

		/**
		 * The meta object literal for the '<em><b>Ventilation</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__VENTILATION = eINSTANCE.getCommissioningRecord_Ventilation();

		/**
		 * The meta object literal for the '<em><b>Mounting</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__MOUNTING = eINSTANCE.getCommissioningRecord_Mounting();

		/**
		 * The meta object literal for the '<em><b>Ac Output</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__AC_OUTPUT = eINSTANCE.getCommissioningRecord_AcOutput();

		/**
		 * The meta object literal for the '<em><b>Alarms</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__ALARMS = eINSTANCE.getCommissioningRecord_Alarms();

		/**
		 * The meta object literal for the '<em><b>Inspections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__INSPECTIONS = eINSTANCE.getCommissioningRecord_Inspections();

		/**
		 * The meta object literal for the '<em><b>Trial</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__TRIAL = eINSTANCE.getCommissioningRecord_Trial();

		/**
		 * The meta object literal for the '<em><b>Upkeep</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__UPKEEP = eINSTANCE.getCommissioningRecord_Upkeep();

		/**
		 * The meta object literal for the '<em><b>Acceptances</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__ACCEPTANCES = eINSTANCE.getCommissioningRecord_Acceptances();

		/**
		 * The meta object literal for the '<em><b>Signatures</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__SIGNATURES = eINSTANCE.getCommissioningRecord_Signatures();

		/**
		 * The meta object literal for the '<em><b>Photographs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__PHOTOGRAPHS = eINSTANCE.getCommissioningRecord_Photographs();

		/**
		 * The meta object literal for the '<em><b>Revisions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__REVISIONS = eINSTANCE.getCommissioningRecord_Revisions();

		/**
		 * The meta object literal for the '<em><b>Unread Entries</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSIONING_RECORD__UNREAD_ENTRIES = eINSTANCE.getCommissioningRecord_UnreadEntries();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.RevisionImpl <em>Revision</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.RevisionImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getRevision()
		 * @generated
		 */
		EClass REVISION = eINSTANCE.getRevision();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVISION__NUMBER = eINSTANCE.getRevision_Number();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVISION__DATE = eINSTANCE.getRevision_Date();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVISION__BY = eINSTANCE.getRevision_By();

		/**
		 * The meta object literal for the '<em><b>Description</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVISION__DESCRIPTION = eINSTANCE.getRevision_Description();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.InstrumentImpl <em>Instrument</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.InstrumentImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getInstrument()
		 * @generated
		 */
		EClass INSTRUMENT = eINSTANCE.getInstrument();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__NAME = eINSTANCE.getInstrument_Name();

		/**
		 * The meta object literal for the '<em><b>Serial Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__SERIAL_NUMBER = eINSTANCE.getInstrument_SerialNumber();

		/**
		 * The meta object literal for the '<em><b>Measures</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__MEASURES = eINSTANCE.getInstrument_Measures();

		/**
		 * The meta object literal for the '<em><b>Accuracy Stated</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__ACCURACY_STATED = eINSTANCE.getInstrument_AccuracyStated();

		/**
		 * The meta object literal for the '<em><b>Calibrated On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__CALIBRATED_ON = eINSTANCE.getInstrument_CalibratedOn();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.PartyImpl <em>Party</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.PartyImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getParty()
		 * @generated
		 */
		EClass PARTY = eINSTANCE.getParty();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PARTY__ROLE = eINSTANCE.getParty_Role();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PARTY__NAME = eINSTANCE.getParty_Name();

		/**
		 * The meta object literal for the '<em><b>Organisation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PARTY__ORGANISATION = eINSTANCE.getParty_Organisation();

		/**
		 * The meta object literal for the '<em><b>Licence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PARTY__LICENCE = eINSTANCE.getParty_Licence();

		/**
		 * The meta object literal for the '<em><b>Contact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PARTY__CONTACT = eINSTANCE.getParty_Contact();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.PhotographImpl <em>Photograph</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.PhotographImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getPhotograph()
		 * @generated
		 */
		EClass PHOTOGRAPH = eINSTANCE.getPhotograph();

		/**
		 * The meta object literal for the '<em><b>Caption</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PHOTOGRAPH__CAPTION = eINSTANCE.getPhotograph_Caption();

		/**
		 * The meta object literal for the '<em><b>Taken On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PHOTOGRAPH__TAKEN_ON = eINSTANCE.getPhotograph_TakenOn();

		/**
		 * The meta object literal for the '<em><b>Media Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PHOTOGRAPH__MEDIA_TYPE = eINSTANCE.getPhotograph_MediaType();

		/**
		 * The meta object literal for the '<em><b>Data</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PHOTOGRAPH__DATA = eINSTANCE.getPhotograph_Data();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.VesselImpl <em>Vessel</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.VesselImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getVessel()
		 * @generated
		 */
		EClass VESSEL = eINSTANCE.getVessel();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__NAME = eINSTANCE.getVessel_Name();

		/**
		 * The meta object literal for the '<em><b>Identification</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__IDENTIFICATION = eINSTANCE.getVessel_Identification();

		/**
		 * The meta object literal for the '<em><b>Flag</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__FLAG = eINSTANCE.getVessel_Flag();

		/**
		 * The meta object literal for the '<em><b>Hull Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__HULL_KIND = eINSTANCE.getVessel_HullKind();

		/**
		 * The meta object literal for the '<em><b>Hull Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__HULL_MATERIAL = eINSTANCE.getVessel_HullMaterial();

		/**
		 * The meta object literal for the '<em><b>Service</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__SERVICE = eINSTANCE.getVessel_Service();

		/**
		 * The meta object literal for the '<em><b>Built On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__BUILT_ON = eINSTANCE.getVessel_BuiltOn();

		/**
		 * The meta object literal for the '<em><b>Length Overall</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__LENGTH_OVERALL = eINSTANCE.getVessel_LengthOverall();

		/**
		 * The meta object literal for the '<em><b>Waterline Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__WATERLINE_LENGTH = eINSTANCE.getVessel_WaterlineLength();

		/**
		 * The meta object literal for the '<em><b>Beam</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__BEAM = eINSTANCE.getVessel_Beam();

		/**
		 * The meta object literal for the '<em><b>Draught</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__DRAUGHT = eINSTANCE.getVessel_Draught();

		/**
		 * The meta object literal for the '<em><b>Freeboard Amidships</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__FREEBOARD_AMIDSHIPS = eINSTANCE.getVessel_FreeboardAmidships();

		/**
		 * The meta object literal for the '<em><b>Passengers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__PASSENGERS = eINSTANCE.getVessel_Passengers();

		/**
		 * The meta object literal for the '<em><b>Overnight Passengers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__OVERNIGHT_PASSENGERS = eINSTANCE.getVessel_OvernightPassengers();

		/**
		 * The meta object literal for the '<em><b>Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__SPEED = eINSTANCE.getVessel_Speed();

		/**
		 * The meta object literal for the '<em><b>Design Heel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__DESIGN_HEEL = eINSTANCE.getVessel_DesignHeel();

		/**
		 * The meta object literal for the '<em><b>Design Roll</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__DESIGN_ROLL = eINSTANCE.getVessel_DesignRoll();

		/**
		 * The meta object literal for the '<em><b>Design Trim</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__DESIGN_TRIM = eINSTANCE.getVessel_DesignTrim();

		/**
		 * The meta object literal for the '<em><b>Sinkage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__SINKAGE = eINSTANCE.getVessel_Sinkage();

		/**
		 * The meta object literal for the '<em><b>Gasoline Engine Aboard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__GASOLINE_ENGINE_ABOARD = eINSTANCE.getVessel_GasolineEngineAboard();

		/**
		 * The meta object literal for the '<em><b>Gasoline Engines</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL__GASOLINE_ENGINES = eINSTANCE.getVessel_GasolineEngines();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.GeneratorSetImpl <em>Generator Set</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.GeneratorSetImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getGeneratorSet()
		 * @generated
		 */
		EClass GENERATOR_SET = eINSTANCE.getGeneratorSet();

		/**
		 * The meta object literal for the '<em><b>Maker</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__MAKER = eINSTANCE.getGeneratorSet_Maker();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__TYPE = eINSTANCE.getGeneratorSet_Type();

		/**
		 * The meta object literal for the '<em><b>Serial Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SERIAL_NUMBER = eINSTANCE.getGeneratorSet_SerialNumber();

		/**
		 * The meta object literal for the '<em><b>Engine Serial Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__ENGINE_SERIAL_NUMBER = eINSTANCE.getGeneratorSet_EngineSerialNumber();

		/**
		 * The meta object literal for the '<em><b>Alternator Serial Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER = eINSTANCE.getGeneratorSet_AlternatorSerialNumber();

		/**
		 * The meta object literal for the '<em><b>Sold On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SOLD_ON = eINSTANCE.getGeneratorSet_SoldOn();

		/**
		 * The meta object literal for the '<em><b>Installed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__INSTALLED_ON = eINSTANCE.getGeneratorSet_InstalledOn();

		/**
		 * The meta object literal for the '<em><b>Hour Meter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__HOUR_METER = eINSTANCE.getGeneratorSet_HourMeter();

		/**
		 * The meta object literal for the '<em><b>Fuel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__FUEL = eINSTANCE.getGeneratorSet_Fuel();

		/**
		 * The meta object literal for the '<em><b>Fuel System</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__FUEL_SYSTEM = eINSTANCE.getGeneratorSet_FuelSystem();

		/**
		 * The meta object literal for the '<em><b>Aspiration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__ASPIRATION = eINSTANCE.getGeneratorSet_Aspiration();

		/**
		 * The meta object literal for the '<em><b>Cooling</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__COOLING = eINSTANCE.getGeneratorSet_Cooling();

		/**
		 * The meta object literal for the '<em><b>Duty Rating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__DUTY_RATING = eINSTANCE.getGeneratorSet_DutyRating();

		/**
		 * The meta object literal for the '<em><b>Rated Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RATED_POWER = eINSTANCE.getGeneratorSet_RatedPower();

		/**
		 * The meta object literal for the '<em><b>Rated Apparent Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RATED_APPARENT_POWER = eINSTANCE.getGeneratorSet_RatedApparentPower();

		/**
		 * The meta object literal for the '<em><b>Rated Power Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RATED_POWER_FACTOR = eINSTANCE.getGeneratorSet_RatedPowerFactor();

		/**
		 * The meta object literal for the '<em><b>Rated Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RATED_VOLTAGE = eINSTANCE.getGeneratorSet_RatedVoltage();

		/**
		 * The meta object literal for the '<em><b>Rated Frequency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RATED_FREQUENCY = eINSTANCE.getGeneratorSet_RatedFrequency();

		/**
		 * The meta object literal for the '<em><b>Phases</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__PHASES = eINSTANCE.getGeneratorSet_Phases();

		/**
		 * The meta object literal for the '<em><b>Rated Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RATED_SPEED = eINSTANCE.getGeneratorSet_RatedSpeed();

		/**
		 * The meta object literal for the '<em><b>Poles</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__POLES = eINSTANCE.getGeneratorSet_Poles();

		/**
		 * The meta object literal for the '<em><b>Cranking Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__CRANKING_SPEED = eINSTANCE.getGeneratorSet_CrankingSpeed();

		/**
		 * The meta object literal for the '<em><b>Shaft Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SHAFT_POWER = eINSTANCE.getGeneratorSet_ShaftPower();

		/**
		 * The meta object literal for the '<em><b>Alternator Efficiency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__ALTERNATOR_EFFICIENCY = eINSTANCE.getGeneratorSet_AlternatorEfficiency();

		/**
		 * The meta object literal for the '<em><b>Fuel Consumption Full Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD = eINSTANCE.getGeneratorSet_FuelConsumptionFullLoad();

		/**
		 * The meta object literal for the '<em><b>Specific Fuel Consumption</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION = eINSTANCE.getGeneratorSet_SpecificFuelConsumption();

		/**
		 * The meta object literal for the '<em><b>Air Fuel Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__AIR_FUEL_RATIO = eINSTANCE.getGeneratorSet_AirFuelRatio();

		/**
		 * The meta object literal for the '<em><b>Exhaust Gas Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__EXHAUST_GAS_TEMPERATURE = eINSTANCE.getGeneratorSet_ExhaustGasTemperature();

		/**
		 * The meta object literal for the '<em><b>Exhaust Mass Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__EXHAUST_MASS_FLOW = eINSTANCE.getGeneratorSet_ExhaustMassFlow();

		/**
		 * The meta object literal for the '<em><b>Heat To Coolant</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__HEAT_TO_COOLANT = eINSTANCE.getGeneratorSet_HeatToCoolant();

		/**
		 * The meta object literal for the '<em><b>Heat To Compartment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__HEAT_TO_COMPARTMENT = eINSTANCE.getGeneratorSet_HeatToCompartment();

		/**
		 * The meta object literal for the '<em><b>Combustion Air Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__COMBUSTION_AIR_FLOW = eINSTANCE.getGeneratorSet_CombustionAirFlow();

		/**
		 * The meta object literal for the '<em><b>Raw Water Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__RAW_WATER_FLOW = eINSTANCE.getGeneratorSet_RawWaterFlow();

		/**
		 * The meta object literal for the '<em><b>System Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SYSTEM_VOLTAGE = eINSTANCE.getGeneratorSet_SystemVoltage();

		/**
		 * The meta object literal for the '<em><b>Cranking Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__CRANKING_CURRENT = eINSTANCE.getGeneratorSet_CrankingCurrent();

		/**
		 * The meta object literal for the '<em><b>Starter Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__STARTER_VOLTAGE = eINSTANCE.getGeneratorSet_StarterVoltage();

		/**
		 * The meta object literal for the '<em><b>In Sound Shield</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__IN_SOUND_SHIELD = eINSTANCE.getGeneratorSet_InSoundShield();

		/**
		 * The meta object literal for the '<em><b>Overload Declared</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__OVERLOAD_DECLARED = eINSTANCE.getGeneratorSet_OverloadDeclared();

		/**
		 * The meta object literal for the '<em><b>Emission Label Marine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__EMISSION_LABEL_MARINE = eINSTANCE.getGeneratorSet_EmissionLabelMarine();

		/**
		 * The meta object literal for the '<em><b>Performance Class</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__PERFORMANCE_CLASS = eINSTANCE.getGeneratorSet_PerformanceClass();

		/**
		 * The meta object literal for the '<em><b>Design Ambient</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__DESIGN_AMBIENT = eINSTANCE.getGeneratorSet_DesignAmbient();

		/**
		 * The meta object literal for the '<em><b>Subtransient Reactance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SUBTRANSIENT_REACTANCE = eINSTANCE.getGeneratorSet_SubtransientReactance();

		/**
		 * The meta object literal for the '<em><b>Transient Reactance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__TRANSIENT_REACTANCE = eINSTANCE.getGeneratorSet_TransientReactance();

		/**
		 * The meta object literal for the '<em><b>Sustained Short Circuit Multiple</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE = eINSTANCE.getGeneratorSet_SustainedShortCircuitMultiple();

		/**
		 * The meta object literal for the '<em><b>Annual Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__ANNUAL_HOURS = eINSTANCE.getGeneratorSet_AnnualHours();

		/**
		 * The meta object literal for the '<em><b>Plate Shows Derated Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GENERATOR_SET__PLATE_SHOWS_DERATED_POWER = eINSTANCE.getGeneratorSet_PlateShowsDeratedPower();

		/**
		 * The meta object literal for the '<em><b>Maker Limits</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GENERATOR_SET__MAKER_LIMITS = eINSTANCE.getGeneratorSet_MakerLimits();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.MakerLimitsImpl <em>Maker Limits</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.MakerLimitsImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getMakerLimits()
		 * @generated
		 */
		EClass MAKER_LIMITS = eINSTANCE.getMakerLimits();

		/**
		 * The meta object literal for the '<em><b>Document</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__DOCUMENT = eINSTANCE.getMakerLimits_Document();

		/**
		 * The meta object literal for the '<em><b>Document Page</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__DOCUMENT_PAGE = eINSTANCE.getMakerLimits_DocumentPage();

		/**
		 * The meta object literal for the '<em><b>Maximum Back Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_BACK_PRESSURE = eINSTANCE.getMakerLimits_MaximumBackPressure();

		/**
		 * The meta object literal for the '<em><b>Maximum Lift Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT = eINSTANCE.getMakerLimits_MaximumLiftHeight();

		/**
		 * The meta object literal for the '<em><b>Minimum Siphon Break Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT = eINSTANCE.getMakerLimits_MinimumSiphonBreakHeight();

		/**
		 * The meta object literal for the '<em><b>Minimum Siphon Clearance Heeled</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED = eINSTANCE.getMakerLimits_MinimumSiphonClearanceHeeled();

		/**
		 * The meta object literal for the '<em><b>Siphon Break Needed Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW = eINSTANCE.getMakerLimits_SiphonBreakNeededBelow();

		/**
		 * The meta object literal for the '<em><b>Minimum Injection Drop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_INJECTION_DROP = eINSTANCE.getMakerLimits_MinimumInjectionDrop();

		/**
		 * The meta object literal for the '<em><b>Minimum Exhaust Fall</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_EXHAUST_FALL = eINSTANCE.getMakerLimits_MinimumExhaustFall();

		/**
		 * The meta object literal for the '<em><b>Minimum Exhaust Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_EXHAUST_BORE = eINSTANCE.getMakerLimits_MinimumExhaustBore();

		/**
		 * The meta object literal for the '<em><b>Maximum Exhaust Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH = eINSTANCE.getMakerLimits_MaximumExhaustLength();

		/**
		 * The meta object literal for the '<em><b>Minimum Muffler Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME = eINSTANCE.getMakerLimits_MinimumMufflerVolume();

		/**
		 * The meta object literal for the '<em><b>Minimum Raw Water Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW = eINSTANCE.getMakerLimits_MinimumRawWaterFlow();

		/**
		 * The meta object literal for the '<em><b>Maximum Raw Water Suction Head</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD = eINSTANCE.getMakerLimits_MaximumRawWaterSuctionHead();

		/**
		 * The meta object literal for the '<em><b>Maximum Raw Water Vacuum</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM = eINSTANCE.getMakerLimits_MaximumRawWaterVacuum();

		/**
		 * The meta object literal for the '<em><b>Maximum Raw Water Inlet Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE = eINSTANCE.getMakerLimits_MaximumRawWaterInletPressure();

		/**
		 * The meta object literal for the '<em><b>Minimum Raw Water Hose Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE = eINSTANCE.getMakerLimits_MinimumRawWaterHoseBore();

		/**
		 * The meta object literal for the '<em><b>Maximum Fuel Lift</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_FUEL_LIFT = eINSTANCE.getMakerLimits_MaximumFuelLift();

		/**
		 * The meta object literal for the '<em><b>Maximum Fuel Vacuum</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_FUEL_VACUUM = eINSTANCE.getMakerLimits_MaximumFuelVacuum();

		/**
		 * The meta object literal for the '<em><b>Minimum Fuel Line Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE = eINSTANCE.getMakerLimits_MinimumFuelLineBore();

		/**
		 * The meta object literal for the '<em><b>Required Separator Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW = eINSTANCE.getMakerLimits_RequiredSeparatorFlow();

		/**
		 * The meta object literal for the '<em><b>Filter Fineness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__FILTER_FINENESS = eINSTANCE.getMakerLimits_FilterFineness();

		/**
		 * The meta object literal for the '<em><b>Minimum Battery Cc A</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_BATTERY_CC_A = eINSTANCE.getMakerLimits_MinimumBatteryCcA();

		/**
		 * The meta object literal for the '<em><b>Minimum Battery Capacity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY = eINSTANCE.getMakerLimits_MinimumBatteryCapacity();

		/**
		 * The meta object literal for the '<em><b>Battery Cranking Definition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__BATTERY_CRANKING_DEFINITION = eINSTANCE.getMakerLimits_BatteryCrankingDefinition();

		/**
		 * The meta object literal for the '<em><b>Maximum Cranking Circuit Resistance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE = eINSTANCE.getMakerLimits_MaximumCrankingCircuitResistance();

		/**
		 * The meta object literal for the '<em><b>Minimum Cranking Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE = eINSTANCE.getMakerLimits_MinimumCrankingVoltage();

		/**
		 * The meta object literal for the '<em><b>Feed Pressure Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__FEED_PRESSURE_LOW = eINSTANCE.getMakerLimits_FeedPressureLow();

		/**
		 * The meta object literal for the '<em><b>Feed Pressure High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__FEED_PRESSURE_HIGH = eINSTANCE.getMakerLimits_FeedPressureHigh();

		/**
		 * The meta object literal for the '<em><b>Rail Pressure Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__RAIL_PRESSURE_LOW = eINSTANCE.getMakerLimits_RailPressureLow();

		/**
		 * The meta object literal for the '<em><b>Rail Pressure High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__RAIL_PRESSURE_HIGH = eINSTANCE.getMakerLimits_RailPressureHigh();

		/**
		 * The meta object literal for the '<em><b>Maximum Crank Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_CRANK_TIME = eINSTANCE.getMakerLimits_MaximumCrankTime();

		/**
		 * The meta object literal for the '<em><b>Maximum Total Crank Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME = eINSTANCE.getMakerLimits_MaximumTotalCrankTime();

		/**
		 * The meta object literal for the '<em><b>Maximum Compartment Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE = eINSTANCE.getMakerLimits_MaximumCompartmentTemperature();

		/**
		 * The meta object literal for the '<em><b>Maximum Compartment Rise</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE = eINSTANCE.getMakerLimits_MaximumCompartmentRise();

		/**
		 * The meta object literal for the '<em><b>Maximum Depression</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_DEPRESSION = eINSTANCE.getMakerLimits_MaximumDepression();

		/**
		 * The meta object literal for the '<em><b>Maximum Heel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_HEEL = eINSTANCE.getMakerLimits_MaximumHeel();

		/**
		 * The meta object literal for the '<em><b>Maximum Trim</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_TRIM = eINSTANCE.getMakerLimits_MaximumTrim();

		/**
		 * The meta object literal for the '<em><b>Maximum Coolant Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE = eINSTANCE.getMakerLimits_MaximumCoolantTemperature();

		/**
		 * The meta object literal for the '<em><b>Minimum Oil Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_OIL_PRESSURE = eINSTANCE.getMakerLimits_MinimumOilPressure();

		/**
		 * The meta object literal for the '<em><b>Maximum Exhaust Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE = eINSTANCE.getMakerLimits_MaximumExhaustTemperature();

		/**
		 * The meta object literal for the '<em><b>Minimum Ventilation Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKER_LIMITS__MINIMUM_VENTILATION_AREA = eINSTANCE.getMakerLimits_MinimumVentilationArea();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.StartingBatteryImpl <em>Starting Battery</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.StartingBatteryImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getStartingBattery()
		 * @generated
		 */
		EClass STARTING_BATTERY = eINSTANCE.getStartingBattery();

		/**
		 * The meta object literal for the '<em><b>Chemistry</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CHEMISTRY = eINSTANCE.getStartingBattery_Chemistry();

		/**
		 * The meta object literal for the '<em><b>Block Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BLOCK_VOLTAGE = eINSTANCE.getStartingBattery_BlockVoltage();

		/**
		 * The meta object literal for the '<em><b>Blocks In Series</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BLOCKS_IN_SERIES = eINSTANCE.getStartingBattery_BlocksInSeries();

		/**
		 * The meta object literal for the '<em><b>Strings In Parallel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__STRINGS_IN_PARALLEL = eINSTANCE.getStartingBattery_StringsInParallel();

		/**
		 * The meta object literal for the '<em><b>Block Capacity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BLOCK_CAPACITY = eINSTANCE.getStartingBattery_BlockCapacity();

		/**
		 * The meta object literal for the '<em><b>Block Cranking Rating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BLOCK_CRANKING_RATING = eINSTANCE.getStartingBattery_BlockCrankingRating();

		/**
		 * The meta object literal for the '<em><b>Cranking Rating Definition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CRANKING_RATING_DEFINITION = eINSTANCE.getStartingBattery_CrankingRatingDefinition();

		/**
		 * The meta object literal for the '<em><b>Installed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__INSTALLED_ON = eINSTANCE.getStartingBattery_InstalledOn();

		/**
		 * The meta object literal for the '<em><b>Block Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BLOCK_MASS = eINSTANCE.getStartingBattery_BlockMass();

		/**
		 * The meta object literal for the '<em><b>Battery Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BATTERY_TEMPERATURE = eINSTANCE.getStartingBattery_BatteryTemperature();

		/**
		 * The meta object literal for the '<em><b>Rest Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__REST_TIME = eINSTANCE.getStartingBattery_RestTime();

		/**
		 * The meta object literal for the '<em><b>Rested Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__RESTED_VOLTAGE = eINSTANCE.getStartingBattery_RestedVoltage();

		/**
		 * The meta object literal for the '<em><b>Coldest Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__COLDEST_START = eINSTANCE.getStartingBattery_ColdestStart();

		/**
		 * The meta object literal for the '<em><b>Blocks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STARTING_BATTERY__BLOCKS = eINSTANCE.getStartingBattery_Blocks();

		/**
		 * The meta object literal for the '<em><b>Dedicated To Generator</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__DEDICATED_TO_GENERATOR = eINSTANCE.getStartingBattery_DedicatedToGenerator();

		/**
		 * The meta object literal for the '<em><b>Isolating Switch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__ISOLATING_SWITCH = eINSTANCE.getStartingBattery_IsolatingSwitch();

		/**
		 * The meta object literal for the '<em><b>Isolating Switch Reachable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE = eINSTANCE.getStartingBattery_IsolatingSwitchReachable();

		/**
		 * The meta object literal for the '<em><b>Emergency Cross Connect</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__EMERGENCY_CROSS_CONNECT = eINSTANCE.getStartingBattery_EmergencyCrossConnect();

		/**
		 * The meta object literal for the '<em><b>Secured</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__SECURED = eINSTANCE.getStartingBattery_Secured();

		/**
		 * The meta object literal for the '<em><b>Movement Under Test</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__MOVEMENT_UNDER_TEST = eINSTANCE.getStartingBattery_MovementUnderTest();

		/**
		 * The meta object literal for the '<em><b>Tray Or Box</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__TRAY_OR_BOX = eINSTANCE.getStartingBattery_TrayOrBox();

		/**
		 * The meta object literal for the '<em><b>Positive Terminal Covered</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__POSITIVE_TERMINAL_COVERED = eINSTANCE.getStartingBattery_PositiveTerminalCovered();

		/**
		 * The meta object literal for the '<em><b>Terminals</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__TERMINALS = eINSTANCE.getStartingBattery_Terminals();

		/**
		 * The meta object literal for the '<em><b>Vented Overboard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__VENTED_OVERBOARD = eINSTANCE.getStartingBattery_VentedOverboard();

		/**
		 * The meta object literal for the '<em><b>Ventilation Area Each Way</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__VENTILATION_AREA_EACH_WAY = eINSTANCE.getStartingBattery_VentilationAreaEachWay();

		/**
		 * The meta object literal for the '<em><b>Distance To Starter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__DISTANCE_TO_STARTER = eINSTANCE.getStartingBattery_DistanceToStarter();

		/**
		 * The meta object literal for the '<em><b>Fuel Parts Within Reach</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH = eINSTANCE.getStartingBattery_FuelPartsWithinReach();

		/**
		 * The meta object literal for the '<em><b>Dielectric Shield</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__DIELECTRIC_SHIELD = eINSTANCE.getStartingBattery_DielectricShield();

		/**
		 * The meta object literal for the '<em><b>Above Or Below Fuel Fittings</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS = eINSTANCE.getStartingBattery_AboveOrBelowFuelFittings();

		/**
		 * The meta object literal for the '<em><b>High Above Bilge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__HIGH_ABOVE_BILGE = eINSTANCE.getStartingBattery_HighAboveBilge();

		/**
		 * The meta object literal for the '<em><b>Charger Rated Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CHARGER_RATED_CURRENT = eINSTANCE.getStartingBattery_ChargerRatedCurrent();

		/**
		 * The meta object literal for the '<em><b>Charger Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CHARGER_VOLTAGE = eINSTANCE.getStartingBattery_ChargerVoltage();

		/**
		 * The meta object literal for the '<em><b>Charging Voltage Running</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING = eINSTANCE.getStartingBattery_ChargingVoltageRunning();

		/**
		 * The meta object literal for the '<em><b>Charger Ammeter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CHARGER_AMMETER = eINSTANCE.getStartingBattery_ChargerAmmeter();

		/**
		 * The meta object literal for the '<em><b>Same Type And Age</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__SAME_TYPE_AND_AGE = eINSTANCE.getStartingBattery_SameTypeAndAge();

		/**
		 * The meta object literal for the '<em><b>Cables</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STARTING_BATTERY__CABLES = eINSTANCE.getStartingBattery_Cables();

		/**
		 * The meta object literal for the '<em><b>Cranking Voltage At Posts</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS = eINSTANCE.getStartingBattery_CrankingVoltageAtPosts();

		/**
		 * The meta object literal for the '<em><b>Cranking Voltage At Starter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER = eINSTANCE.getStartingBattery_CrankingVoltageAtStarter();

		/**
		 * The meta object literal for the '<em><b>Blocks Mixed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__BLOCKS_MIXED = eINSTANCE.getStartingBattery_BlocksMixed();

		/**
		 * The meta object literal for the '<em><b>Emergency Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STARTING_BATTERY__EMERGENCY_SOURCE = eINSTANCE.getStartingBattery_EmergencySource();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.BatteryBlockImpl <em>Battery Block</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.BatteryBlockImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getBatteryBlock()
		 * @generated
		 */
		EClass BATTERY_BLOCK = eINSTANCE.getBatteryBlock();

		/**
		 * The meta object literal for the '<em><b>Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATTERY_BLOCK__LABEL = eINSTANCE.getBatteryBlock_Label();

		/**
		 * The meta object literal for the '<em><b>Rested Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATTERY_BLOCK__RESTED_VOLTAGE = eINSTANCE.getBatteryBlock_RestedVoltage();

		/**
		 * The meta object literal for the '<em><b>Specific Gravity Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW = eINSTANCE.getBatteryBlock_SpecificGravityLow();

		/**
		 * The meta object literal for the '<em><b>Specific Gravity High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH = eINSTANCE.getBatteryBlock_SpecificGravityHigh();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.CableRunImpl <em>Cable Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.CableRunImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getCableRun()
		 * @generated
		 */
		EClass CABLE_RUN = eINSTANCE.getCableRun();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__NAME = eINSTANCE.getCableRun_Name();

		/**
		 * The meta object literal for the '<em><b>Function</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__FUNCTION = eINSTANCE.getCableRun_Function();

		/**
		 * The meta object literal for the '<em><b>Conductor Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CONDUCTOR_SIZE = eINSTANCE.getCableRun_ConductorSize();

		/**
		 * The meta object literal for the '<em><b>Strand Class</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__STRAND_CLASS = eINSTANCE.getCableRun_StrandClass();

		/**
		 * The meta object literal for the '<em><b>Insulation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__INSULATION = eINSTANCE.getCableRun_Insulation();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__LENGTH = eINSTANCE.getCableRun_Length();

		/**
		 * The meta object literal for the '<em><b>Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CURRENT = eINSTANCE.getCableRun_Current();

		/**
		 * The meta object literal for the '<em><b>System Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__SYSTEM_VOLTAGE = eINSTANCE.getCableRun_SystemVoltage();

		/**
		 * The meta object literal for the '<em><b>Critical</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CRITICAL = eINSTANCE.getCableRun_Critical();

		/**
		 * The meta object literal for the '<em><b>In Engine Space</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__IN_ENGINE_SPACE = eINSTANCE.getCableRun_InEngineSpace();

		/**
		 * The meta object literal for the '<em><b>Conductors In Bundle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CONDUCTORS_IN_BUNDLE = eINSTANCE.getCableRun_ConductorsInBundle();

		/**
		 * The meta object literal for the '<em><b>Conductor Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CONDUCTOR_TEMPERATURE = eINSTANCE.getCableRun_ConductorTemperature();

		/**
		 * The meta object literal for the '<em><b>Protection</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__PROTECTION = eINSTANCE.getCableRun_Protection();

		/**
		 * The meta object literal for the '<em><b>Protection Rating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__PROTECTION_RATING = eINSTANCE.getCableRun_ProtectionRating();

		/**
		 * The meta object literal for the '<em><b>Protection Voltage Rating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__PROTECTION_VOLTAGE_RATING = eINSTANCE.getCableRun_ProtectionVoltageRating();

		/**
		 * The meta object literal for the '<em><b>Protection Distance From Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE = eINSTANCE.getCableRun_ProtectionDistanceFromSource();

		/**
		 * The meta object literal for the '<em><b>Sheathed To Protection</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__SHEATHED_TO_PROTECTION = eINSTANCE.getCableRun_SheathedToProtection();

		/**
		 * The meta object literal for the '<em><b>Connected To Battery Terminal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL = eINSTANCE.getCableRun_ConnectedToBatteryTerminal();

		/**
		 * The meta object literal for the '<em><b>Support Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__SUPPORT_SPACING = eINSTANCE.getCableRun_SupportSpacing();

		/**
		 * The meta object literal for the '<em><b>Ring Terminals</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__RING_TERMINALS = eINSTANCE.getCableRun_RingTerminals();

		/**
		 * The meta object literal for the '<em><b>Lugs On Stud</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__LUGS_ON_STUD = eINSTANCE.getCableRun_LugsOnStud();

		/**
		 * The meta object literal for the '<em><b>Chafe Protected</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__CHAFE_PROTECTED = eINSTANCE.getCableRun_ChafeProtected();

		/**
		 * The meta object literal for the '<em><b>Multi Strand Copper</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__MULTI_STRAND_COPPER = eINSTANCE.getCableRun_MultiStrandCopper();

		/**
		 * The meta object literal for the '<em><b>Measured Drop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CABLE_RUN__MEASURED_DROP = eINSTANCE.getCableRun_MeasuredDrop();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.FuelSupplyImpl <em>Fuel Supply</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.FuelSupplyImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelSupply()
		 * @generated
		 */
		EClass FUEL_SUPPLY = eINSTANCE.getFuelSupply();

		/**
		 * The meta object literal for the '<em><b>Tank</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FUEL_SUPPLY__TANK = eINSTANCE.getFuelSupply_Tank();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FUEL_SUPPLY__LINES = eINSTANCE.getFuelSupply_Lines();

		/**
		 * The meta object literal for the '<em><b>Separator</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FUEL_SUPPLY__SEPARATOR = eINSTANCE.getFuelSupply_Separator();

		/**
		 * The meta object literal for the '<em><b>Pump Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FUEL_SUPPLY__PUMP_POSITION = eINSTANCE.getFuelSupply_PumpPosition();

		/**
		 * The meta object literal for the '<em><b>Engine Inlet Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__ENGINE_INLET_HEIGHT = eINSTANCE.getFuelSupply_EngineInletHeight();

		/**
		 * The meta object literal for the '<em><b>Highest Line Point</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__HIGHEST_LINE_POINT = eINSTANCE.getFuelSupply_HighestLinePoint();

		/**
		 * The meta object literal for the '<em><b>Lowest Line Point</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__LOWEST_LINE_POINT = eINSTANCE.getFuelSupply_LowestLinePoint();

		/**
		 * The meta object literal for the '<em><b>Pump Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PUMP_FLOW = eINSTANCE.getFuelSupply_PumpFlow();

		/**
		 * The meta object literal for the '<em><b>Electric Pump</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__ELECTRIC_PUMP = eINSTANCE.getFuelSupply_ElectricPump();

		/**
		 * The meta object literal for the '<em><b>Pump Stops With Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE = eINSTANCE.getFuelSupply_PumpStopsWithEngine();

		/**
		 * The meta object literal for the '<em><b>Pump Within Reach Of Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE = eINSTANCE.getFuelSupply_PumpWithinReachOfEngine();

		/**
		 * The meta object literal for the '<em><b>Anti Siphon</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__ANTI_SIPHON = eINSTANCE.getFuelSupply_AntiSiphon();

		/**
		 * The meta object literal for the '<em><b>Anti Siphon Cracking Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE = eINSTANCE.getFuelSupply_AntiSiphonCrackingPressure();

		/**
		 * The meta object literal for the '<em><b>Tank Shut Off</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__TANK_SHUT_OFF = eINSTANCE.getFuelSupply_TankShutOff();

		/**
		 * The meta object literal for the '<em><b>Tank Shut Off Reachable From Outside</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE = eINSTANCE.getFuelSupply_TankShutOffReachableFromOutside();

		/**
		 * The meta object literal for the '<em><b>Engine Shut Off</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__ENGINE_SHUT_OFF = eINSTANCE.getFuelSupply_EngineShutOff();

		/**
		 * The meta object literal for the '<em><b>Line Length Tank To Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE = eINSTANCE.getFuelSupply_LineLengthTankToEngine();

		/**
		 * The meta object literal for the '<em><b>Own Pick Up</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__OWN_PICK_UP = eINSTANCE.getFuelSupply_OwnPickUp();

		/**
		 * The meta object literal for the '<em><b>Pick Up Clearance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PICK_UP_CLEARANCE = eINSTANCE.getFuelSupply_PickUpClearance();

		/**
		 * The meta object literal for the '<em><b>Pick Up Screen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PICK_UP_SCREEN = eINSTANCE.getFuelSupply_PickUpScreen();

		/**
		 * The meta object literal for the '<em><b>Return To Tank In Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__RETURN_TO_TANK_IN_USE = eINSTANCE.getFuelSupply_ReturnToTankInUse();

		/**
		 * The meta object literal for the '<em><b>Return Can Dead Head</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD = eINSTANCE.getFuelSupply_ReturnCanDeadHead();

		/**
		 * The meta object literal for the '<em><b>Flexible Last Link</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__FLEXIBLE_LAST_LINK = eINSTANCE.getFuelSupply_FlexibleLastLink();

		/**
		 * The meta object literal for the '<em><b>Rigid Line Support Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE = eINSTANCE.getFuelSupply_RigidLineSupportDistance();

		/**
		 * The meta object literal for the '<em><b>Flexible Hose Spill Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME = eINSTANCE.getFuelSupply_FlexibleHoseSpillVolume();

		/**
		 * The meta object literal for the '<em><b>Leak Test Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__LEAK_TEST_PRESSURE = eINSTANCE.getFuelSupply_LeakTestPressure();

		/**
		 * The meta object literal for the '<em><b>Leak Test Held</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__LEAK_TEST_HELD = eINSTANCE.getFuelSupply_LeakTestHeld();

		/**
		 * The meta object literal for the '<em><b>Ground Resistance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__GROUND_RESISTANCE = eINSTANCE.getFuelSupply_GroundResistance();

		/**
		 * The meta object literal for the '<em><b>Fill Hose Clamps</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__FILL_HOSE_CLAMPS = eINSTANCE.getFuelSupply_FillHoseClamps();

		/**
		 * The meta object literal for the '<em><b>Fill Clamp Band Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH = eINSTANCE.getFuelSupply_FillClampBandWidth();

		/**
		 * The meta object literal for the '<em><b>Vent Flame Arrester</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__VENT_FLAME_ARRESTER = eINSTANCE.getFuelSupply_VentFlameArrester();

		/**
		 * The meta object literal for the '<em><b>Clean Vacuum At Pump</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP = eINSTANCE.getFuelSupply_CleanVacuumAtPump();

		/**
		 * The meta object literal for the '<em><b>Vacuum At Pump Now</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__VACUUM_AT_PUMP_NOW = eINSTANCE.getFuelSupply_VacuumAtPumpNow();

		/**
		 * The meta object literal for the '<em><b>Feed Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__FEED_PRESSURE = eINSTANCE.getFuelSupply_FeedPressure();

		/**
		 * The meta object literal for the '<em><b>Rail Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__RAIL_PRESSURE = eINSTANCE.getFuelSupply_RailPressure();

		/**
		 * The meta object literal for the '<em><b>Planned Run Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PLANNED_RUN_TIME = eINSTANCE.getFuelSupply_PlannedRunTime();

		/**
		 * The meta object literal for the '<em><b>Planned Load Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__PLANNED_LOAD_POWER = eINSTANCE.getFuelSupply_PlannedLoadPower();

		/**
		 * The meta object literal for the '<em><b>Backfire Flame Arrester</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER = eINSTANCE.getFuelSupply_BackfireFlameArrester();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.FuelTankImpl <em>Fuel Tank</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.FuelTankImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelTank()
		 * @generated
		 */
		EClass FUEL_TANK = eINSTANCE.getFuelTank();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__NAME = eINSTANCE.getFuelTank_Name();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__MATERIAL = eINSTANCE.getFuelTank_Material();

		/**
		 * The meta object literal for the '<em><b>Capacity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__CAPACITY = eINSTANCE.getFuelTank_Capacity();

		/**
		 * The meta object literal for the '<em><b>Usable Fraction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__USABLE_FRACTION = eINSTANCE.getFuelTank_UsableFraction();

		/**
		 * The meta object literal for the '<em><b>Top</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FUEL_TANK__TOP = eINSTANCE.getFuelTank_Top();

		/**
		 * The meta object literal for the '<em><b>Bottom Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__BOTTOM_HEIGHT = eINSTANCE.getFuelTank_BottomHeight();

		/**
		 * The meta object literal for the '<em><b>Labelled</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__LABELLED = eINSTANCE.getFuelTank_Labelled();

		/**
		 * The meta object literal for the '<em><b>Test Pressure On Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__TEST_PRESSURE_ON_LABEL = eINSTANCE.getFuelTank_TestPressureOnLabel();

		/**
		 * The meta object literal for the '<em><b>Test Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__TEST_PRESSURE = eINSTANCE.getFuelTank_TestPressure();

		/**
		 * The meta object literal for the '<em><b>Openings At Top</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__OPENINGS_AT_TOP = eINSTANCE.getFuelTank_OpeningsAtTop();

		/**
		 * The meta object literal for the '<em><b>Movement</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__MOVEMENT = eINSTANCE.getFuelTank_Movement();

		/**
		 * The meta object literal for the '<em><b>Shared With Main Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_TANK__SHARED_WITH_MAIN_ENGINE = eINSTANCE.getFuelTank_SharedWithMainEngine();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.FuelLineRunImpl <em>Fuel Line Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.FuelLineRunImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelLineRun()
		 * @generated
		 */
		EClass FUEL_LINE_RUN = eINSTANCE.getFuelLineRun();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__NAME = eINSTANCE.getFuelLineRun_Name();

		/**
		 * The meta object literal for the '<em><b>Function</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__FUNCTION = eINSTANCE.getFuelLineRun_Function();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__KIND = eINSTANCE.getFuelLineRun_Kind();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__BORE = eINSTANCE.getFuelLineRun_Bore();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__LENGTH = eINSTANCE.getFuelLineRun_Length();

		/**
		 * The meta object literal for the '<em><b>Marking</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__MARKING = eINSTANCE.getFuelLineRun_Marking();

		/**
		 * The meta object literal for the '<em><b>Working Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__WORKING_PRESSURE = eINSTANCE.getFuelLineRun_WorkingPressure();

		/**
		 * The meta object literal for the '<em><b>Clamps Per End</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__CLAMPS_PER_END = eINSTANCE.getFuelLineRun_ClampsPerEnd();

		/**
		 * The meta object literal for the '<em><b>Barbed Ends</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__BARBED_ENDS = eINSTANCE.getFuelLineRun_BarbedEnds();

		/**
		 * The meta object literal for the '<em><b>In Engine Space</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__IN_ENGINE_SPACE = eINSTANCE.getFuelLineRun_InEngineSpace();

		/**
		 * The meta object literal for the '<em><b>Installed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_LINE_RUN__INSTALLED_ON = eINSTANCE.getFuelLineRun_InstalledOn();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.FuelSeparatorImpl <em>Fuel Separator</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.FuelSeparatorImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelSeparator()
		 * @generated
		 */
		EClass FUEL_SEPARATOR = eINSTANCE.getFuelSeparator();

		/**
		 * The meta object literal for the '<em><b>Maker</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__MAKER = eINSTANCE.getFuelSeparator_Maker();

		/**
		 * The meta object literal for the '<em><b>Rated Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__RATED_FLOW = eINSTANCE.getFuelSeparator_RatedFlow();

		/**
		 * The meta object literal for the '<em><b>Fineness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__FINENESS = eINSTANCE.getFuelSeparator_Fineness();

		/**
		 * The meta object literal for the '<em><b>On Engine Fineness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__ON_ENGINE_FINENESS = eINSTANCE.getFuelSeparator_OnEngineFineness();

		/**
		 * The meta object literal for the '<em><b>Bowl</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__BOWL = eINSTANCE.getFuelSeparator_Bowl();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FUEL_SEPARATOR__POSITION = eINSTANCE.getFuelSeparator_Position();

		/**
		 * The meta object literal for the '<em><b>Clearance Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__CLEARANCE_BELOW = eINSTANCE.getFuelSeparator_ClearanceBelow();

		/**
		 * The meta object literal for the '<em><b>Fixed To Structure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__FIXED_TO_STRUCTURE = eINSTANCE.getFuelSeparator_FixedToStructure();

		/**
		 * The meta object literal for the '<em><b>Highest Point Of Line</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE = eINSTANCE.getFuelSeparator_HighestPointOfLine();

		/**
		 * The meta object literal for the '<em><b>Fire Tested</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__FIRE_TESTED = eINSTANCE.getFuelSeparator_FireTested();

		/**
		 * The meta object literal for the '<em><b>Water Alarm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__WATER_ALARM = eINSTANCE.getFuelSeparator_WaterAlarm();

		/**
		 * The meta object literal for the '<em><b>Element Changed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__ELEMENT_CHANGED_ON = eINSTANCE.getFuelSeparator_ElementChangedOn();

		/**
		 * The meta object literal for the '<em><b>Bypass Or Spare</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__BYPASS_OR_SPARE = eINSTANCE.getFuelSeparator_BypassOrSpare();

		/**
		 * The meta object literal for the '<em><b>Water Found</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_SEPARATOR__WATER_FOUND = eINSTANCE.getFuelSeparator_WaterFound();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.RawWaterCircuitImpl <em>Raw Water Circuit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.RawWaterCircuitImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getRawWaterCircuit()
		 * @generated
		 */
		EClass RAW_WATER_CIRCUIT = eINSTANCE.getRawWaterCircuit();

		/**
		 * The meta object literal for the '<em><b>Pick Up</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__PICK_UP = eINSTANCE.getRawWaterCircuit_PickUp();

		/**
		 * The meta object literal for the '<em><b>Seacock</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__SEACOCK = eINSTANCE.getRawWaterCircuit_Seacock();

		/**
		 * The meta object literal for the '<em><b>Strainer</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__STRAINER = eINSTANCE.getRawWaterCircuit_Strainer();

		/**
		 * The meta object literal for the '<em><b>Hoses</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__HOSES = eINSTANCE.getRawWaterCircuit_Hoses();

		/**
		 * The meta object literal for the '<em><b>Pump</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__PUMP = eINSTANCE.getRawWaterCircuit_Pump();

		/**
		 * The meta object literal for the '<em><b>Siphon Break</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__SIPHON_BREAK = eINSTANCE.getRawWaterCircuit_SiphonBreak();

		/**
		 * The meta object literal for the '<em><b>Injection</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER_CIRCUIT__INJECTION = eINSTANCE.getRawWaterCircuit_Injection();

		/**
		 * The meta object literal for the '<em><b>Siphon Break Hose Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE = eINSTANCE.getRawWaterCircuit_SiphonBreakHoseBore();

		/**
		 * The meta object literal for the '<em><b>Own Intake</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__OWN_INTAKE = eINSTANCE.getRawWaterCircuit_OwnIntake();

		/**
		 * The meta object literal for the '<em><b>Discharge Ahead Of Intake</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE = eINSTANCE.getRawWaterCircuit_DischargeAheadOfIntake();

		/**
		 * The meta object literal for the '<em><b>Measured Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__MEASURED_FLOW = eINSTANCE.getRawWaterCircuit_MeasuredFlow();

		/**
		 * The meta object literal for the '<em><b>Measured Vacuum At Pump</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP = eINSTANCE.getRawWaterCircuit_MeasuredVacuumAtPump();

		/**
		 * The meta object literal for the '<em><b>Measured Inlet Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE = eINSTANCE.getRawWaterCircuit_MeasuredInletTemperature();

		/**
		 * The meta object literal for the '<em><b>Measured Overboard Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE = eINSTANCE.getRawWaterCircuit_MeasuredOverboardTemperature();

		/**
		 * The meta object literal for the '<em><b>Design Sea Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE = eINSTANCE.getRawWaterCircuit_DesignSeaTemperature();

		/**
		 * The meta object literal for the '<em><b>Seacock Tag At Start Panel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL = eINSTANCE.getRawWaterCircuit_SeacockTagAtStartPanel();

		/**
		 * The meta object literal for the '<em><b>Shut When Not In Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE = eINSTANCE.getRawWaterCircuit_ShutWhenNotInUse();

		/**
		 * The meta object literal for the '<em><b>Winterise Connection</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER_CIRCUIT__WINTERISE_CONNECTION = eINSTANCE.getRawWaterCircuit_WinteriseConnection();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.HullPickUpImpl <em>Hull Pick Up</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.HullPickUpImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getHullPickUp()
		 * @generated
		 */
		EClass HULL_PICK_UP = eINSTANCE.getHullPickUp();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HULL_PICK_UP__KIND = eINSTANCE.getHullPickUp_Kind();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HULL_PICK_UP__POSITION = eINSTANCE.getHullPickUp_Position();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HULL_PICK_UP__BORE = eINSTANCE.getHullPickUp_Bore();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HULL_PICK_UP__MATERIAL = eINSTANCE.getHullPickUp_Material();

		/**
		 * The meta object literal for the '<em><b>Grating Open Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HULL_PICK_UP__GRATING_OPEN_AREA = eINSTANCE.getHullPickUp_GratingOpenArea();

		/**
		 * The meta object literal for the '<em><b>Light Ship Rise</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HULL_PICK_UP__LIGHT_SHIP_RISE = eINSTANCE.getHullPickUp_LightShipRise();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.SeacockImpl <em>Seacock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.SeacockImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getSeacock()
		 * @generated
		 */
		EClass SEACOCK = eINSTANCE.getSeacock();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__KIND = eINSTANCE.getSeacock_Kind();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__MATERIAL = eINSTANCE.getSeacock_Material();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__BORE = eINSTANCE.getSeacock_Bore();

		/**
		 * The meta object literal for the '<em><b>Full Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__FULL_BORE = eINSTANCE.getSeacock_FullBore();

		/**
		 * The meta object literal for the '<em><b>Lever Shows State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__LEVER_SHOWS_STATE = eINSTANCE.getSeacock_LeverShowsState();

		/**
		 * The meta object literal for the '<em><b>Reachable Without Tools</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__REACHABLE_WITHOUT_TOOLS = eINSTANCE.getSeacock_ReachableWithoutTools();

		/**
		 * The meta object literal for the '<em><b>Close To Hull</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__CLOSE_TO_HULL = eINSTANCE.getSeacock_CloseToHull();

		/**
		 * The meta object literal for the '<em><b>Static Load Marked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__STATIC_LOAD_MARKED = eINSTANCE.getSeacock_StaticLoadMarked();

		/**
		 * The meta object literal for the '<em><b>Works Freely</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEACOCK__WORKS_FREELY = eINSTANCE.getSeacock_WorksFreely();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.WaterStrainerImpl <em>Water Strainer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.WaterStrainerImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getWaterStrainer()
		 * @generated
		 */
		EClass WATER_STRAINER = eINSTANCE.getWaterStrainer();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WATER_STRAINER__POSITION = eINSTANCE.getWaterStrainer_Position();

		/**
		 * The meta object literal for the '<em><b>Port Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_STRAINER__PORT_BORE = eINSTANCE.getWaterStrainer_PortBore();

		/**
		 * The meta object literal for the '<em><b>Basket Open Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_STRAINER__BASKET_OPEN_AREA = eINSTANCE.getWaterStrainer_BasketOpenArea();

		/**
		 * The meta object literal for the '<em><b>Hole Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_STRAINER__HOLE_SIZE = eINSTANCE.getWaterStrainer_HoleSize();

		/**
		 * The meta object literal for the '<em><b>See Through Or Openable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_STRAINER__SEE_THROUGH_OR_OPENABLE = eINSTANCE.getWaterStrainer_SeeThroughOrOpenable();

		/**
		 * The meta object literal for the '<em><b>Beside Seacock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_STRAINER__BESIDE_SEACOCK = eINSTANCE.getWaterStrainer_BesideSeacock();

		/**
		 * The meta object literal for the '<em><b>Lid Above Waterline</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_STRAINER__LID_ABOVE_WATERLINE = eINSTANCE.getWaterStrainer_LidAboveWaterline();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.WaterHoseRunImpl <em>Water Hose Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.WaterHoseRunImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getWaterHoseRun()
		 * @generated
		 */
		EClass WATER_HOSE_RUN = eINSTANCE.getWaterHoseRun();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__NAME = eINSTANCE.getWaterHoseRun_Name();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__SECTION = eINSTANCE.getWaterHoseRun_Section();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__KIND = eINSTANCE.getWaterHoseRun_Kind();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__BORE = eINSTANCE.getWaterHoseRun_Bore();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__LENGTH = eINSTANCE.getWaterHoseRun_Length();

		/**
		 * The meta object literal for the '<em><b>Clamps Per End</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__CLAMPS_PER_END = eINSTANCE.getWaterHoseRun_ClampsPerEnd();

		/**
		 * The meta object literal for the '<em><b>Collapse Proof</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__COLLAPSE_PROOF = eINSTANCE.getWaterHoseRun_CollapseProof();

		/**
		 * The meta object literal for the '<em><b>Fittings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WATER_HOSE_RUN__FITTINGS = eINSTANCE.getWaterHoseRun_Fittings();

		/**
		 * The meta object literal for the '<em><b>Installed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_HOSE_RUN__INSTALLED_ON = eINSTANCE.getWaterHoseRun_InstalledOn();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.PipeFittingImpl <em>Pipe Fitting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.PipeFittingImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getPipeFitting()
		 * @generated
		 */
		EClass PIPE_FITTING = eINSTANCE.getPipeFitting();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_FITTING__KIND = eINSTANCE.getPipeFitting_Kind();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_FITTING__COUNT = eINSTANCE.getPipeFitting_Count();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.WaterPumpImpl <em>Water Pump</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.WaterPumpImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getWaterPump()
		 * @generated
		 */
		EClass WATER_PUMP = eINSTANCE.getWaterPump();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WATER_PUMP__POSITION = eINSTANCE.getWaterPump_Position();

		/**
		 * The meta object literal for the '<em><b>Inlet Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__INLET_BORE = eINSTANCE.getWaterPump_InletBore();

		/**
		 * The meta object literal for the '<em><b>Outlet Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__OUTLET_BORE = eINSTANCE.getWaterPump_OutletBore();

		/**
		 * The meta object literal for the '<em><b>Rated Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__RATED_FLOW = eINSTANCE.getWaterPump_RatedFlow();

		/**
		 * The meta object literal for the '<em><b>Self Priming</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__SELF_PRIMING = eINSTANCE.getWaterPump_SelfPriming();

		/**
		 * The meta object literal for the '<em><b>Impeller Pieces Missing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__IMPELLER_PIECES_MISSING = eINSTANCE.getWaterPump_ImpellerPiecesMissing();

		/**
		 * The meta object literal for the '<em><b>Impeller Pieces Found</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__IMPELLER_PIECES_FOUND = eINSTANCE.getWaterPump_ImpellerPiecesFound();

		/**
		 * The meta object literal for the '<em><b>Impeller Changed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_PUMP__IMPELLER_CHANGED_ON = eINSTANCE.getWaterPump_ImpellerChangedOn();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.SiphonBreakImpl <em>Siphon Break</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.SiphonBreakImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getSiphonBreak()
		 * @generated
		 */
		EClass SIPHON_BREAK = eINSTANCE.getSiphonBreak();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__KIND = eINSTANCE.getSiphonBreak_Kind();

		/**
		 * The meta object literal for the '<em><b>Vent Seat</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIPHON_BREAK__VENT_SEAT = eINSTANCE.getSiphonBreak_VentSeat();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__PLACE = eINSTANCE.getSiphonBreak_Place();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__BORE = eINSTANCE.getSiphonBreak_Bore();

		/**
		 * The meta object literal for the '<em><b>Highest Point</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__HIGHEST_POINT = eINSTANCE.getSiphonBreak_HighestPoint();

		/**
		 * The meta object literal for the '<em><b>Vent Hose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__VENT_HOSE = eINSTANCE.getSiphonBreak_VentHose();

		/**
		 * The meta object literal for the '<em><b>Vent Hose Free</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__VENT_HOSE_FREE = eINSTANCE.getSiphonBreak_VentHoseFree();

		/**
		 * The meta object literal for the '<em><b>Vent Hose End Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__VENT_HOSE_END_HEIGHT = eINSTANCE.getSiphonBreak_VentHoseEndHeight();

		/**
		 * The meta object literal for the '<em><b>Bleed Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__BLEED_BORE = eINSTANCE.getSiphonBreak_BleedBore();

		/**
		 * The meta object literal for the '<em><b>Tell Tale Visible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__TELL_TALE_VISIBLE = eINSTANCE.getSiphonBreak_TellTaleVisible();

		/**
		 * The meta object literal for the '<em><b>Above Electrics</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__ABOVE_ELECTRICS = eINSTANCE.getSiphonBreak_AboveElectrics();

		/**
		 * The meta object literal for the '<em><b>Drip Shield</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__DRIP_SHIELD = eINSTANCE.getSiphonBreak_DripShield();

		/**
		 * The meta object literal for the '<em><b>Serviced On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__SERVICED_ON = eINSTANCE.getSiphonBreak_ServicedOn();

		/**
		 * The meta object literal for the '<em><b>Valve Tested</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIPHON_BREAK__VALVE_TESTED = eINSTANCE.getSiphonBreak_ValveTested();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ExhaustRunImpl <em>Exhaust Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ExhaustRunImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustRun()
		 * @generated
		 */
		EClass EXHAUST_RUN = eINSTANCE.getExhaustRun();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__PATH = eINSTANCE.getExhaustRun_Path();

		/**
		 * The meta object literal for the '<em><b>Sections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__SECTIONS = eINSTANCE.getExhaustRun_Sections();

		/**
		 * The meta object literal for the '<em><b>Muffler</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__MUFFLER = eINSTANCE.getExhaustRun_Muffler();

		/**
		 * The meta object literal for the '<em><b>Riser</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__RISER = eINSTANCE.getExhaustRun_Riser();

		/**
		 * The meta object literal for the '<em><b>Crest</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__CREST = eINSTANCE.getExhaustRun_Crest();

		/**
		 * The meta object literal for the '<em><b>Outlet</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__OUTLET = eINSTANCE.getExhaustRun_Outlet();

		/**
		 * The meta object literal for the '<em><b>Separator Drain</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_RUN__SEPARATOR_DRAIN = eINSTANCE.getExhaustRun_SeparatorDrain();

		/**
		 * The meta object literal for the '<em><b>Turbine Outlet Port Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE = eINSTANCE.getExhaustRun_TurbineOutletPortBore();

		/**
		 * The meta object literal for the '<em><b>Own System</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__OWN_SYSTEM = eINSTANCE.getExhaustRun_OwnSystem();

		/**
		 * The meta object literal for the '<em><b>Gas Tight</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__GAS_TIGHT = eINSTANCE.getExhaustRun_GasTight();

		/**
		 * The meta object literal for the '<em><b>Dry Parts Lagged</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__DRY_PARTS_LAGGED = eINSTANCE.getExhaustRun_DryPartsLagged();

		/**
		 * The meta object literal for the '<em><b>Dry Part Surface Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE = eINSTANCE.getExhaustRun_DryPartSurfaceTemperature();

		/**
		 * The meta object literal for the '<em><b>Weight On Manifold</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__WEIGHT_ON_MANIFOLD = eINSTANCE.getExhaustRun_WeightOnManifold();

		/**
		 * The meta object literal for the '<em><b>Temperature Alarm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__TEMPERATURE_ALARM = eINSTANCE.getExhaustRun_TemperatureAlarm();

		/**
		 * The meta object literal for the '<em><b>Temperature Alarm Setting</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__TEMPERATURE_ALARM_SETTING = eINSTANCE.getExhaustRun_TemperatureAlarmSetting();

		/**
		 * The meta object literal for the '<em><b>Test Tap Fitted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__TEST_TAP_FITTED = eINSTANCE.getExhaustRun_TestTapFitted();

		/**
		 * The meta object literal for the '<em><b>Test Tap Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__TEST_TAP_DISTANCE = eINSTANCE.getExhaustRun_TestTapDistance();

		/**
		 * The meta object literal for the '<em><b>Measured Back Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__MEASURED_BACK_PRESSURE = eINSTANCE.getExhaustRun_MeasuredBackPressure();

		/**
		 * The meta object literal for the '<em><b>Measured Back Pressure Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD = eINSTANCE.getExhaustRun_MeasuredBackPressureLoad();

		/**
		 * The meta object literal for the '<em><b>Baseline Back Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__BASELINE_BACK_PRESSURE = eINSTANCE.getExhaustRun_BaselineBackPressure();

		/**
		 * The meta object literal for the '<em><b>Silencer Loss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__SILENCER_LOSS = eINSTANCE.getExhaustRun_SilencerLoss();

		/**
		 * The meta object literal for the '<em><b>Water Full Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__WATER_FULL_LENGTH = eINSTANCE.getExhaustRun_WaterFullLength();

		/**
		 * The meta object literal for the '<em><b>Bulkheads Sealed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__BULKHEADS_SEALED = eINSTANCE.getExhaustRun_BulkheadsSealed();

		/**
		 * The meta object literal for the '<em><b>Joints Accessible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__JOINTS_ACCESSIBLE = eINSTANCE.getExhaustRun_JointsAccessible();

		/**
		 * The meta object literal for the '<em><b>Clear Of Combustibles</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES = eINSTANCE.getExhaustRun_ClearOfCombustibles();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ExhaustPointImpl <em>Exhaust Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ExhaustPointImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustPoint()
		 * @generated
		 */
		EClass EXHAUST_POINT = eINSTANCE.getExhaustPoint();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_POINT__NAME = eINSTANCE.getExhaustPoint_Name();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_POINT__POSITION = eINSTANCE.getExhaustPoint_Position();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_POINT__BORE = eINSTANCE.getExhaustPoint_Bore();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ExhaustSectionRunImpl <em>Exhaust Section Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ExhaustSectionRunImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustSectionRun()
		 * @generated
		 */
		EClass EXHAUST_SECTION_RUN = eINSTANCE.getExhaustSectionRun();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__NAME = eINSTANCE.getExhaustSectionRun_Name();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__SECTION = eINSTANCE.getExhaustSectionRun_Section();

		/**
		 * The meta object literal for the '<em><b>Standard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__STANDARD = eINSTANCE.getExhaustSectionRun_Standard();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__BORE = eINSTANCE.getExhaustSectionRun_Bore();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__LENGTH = eINSTANCE.getExhaustSectionRun_Length();

		/**
		 * The meta object literal for the '<em><b>Rise</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__RISE = eINSTANCE.getExhaustSectionRun_Rise();

		/**
		 * The meta object literal for the '<em><b>Fall</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__FALL = eINSTANCE.getExhaustSectionRun_Fall();

		/**
		 * The meta object literal for the '<em><b>Slopes Back To Muffler</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER = eINSTANCE.getExhaustSectionRun_SlopesBackToMuffler();

		/**
		 * The meta object literal for the '<em><b>Bends</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_SECTION_RUN__BENDS = eINSTANCE.getExhaustSectionRun_Bends();

		/**
		 * The meta object literal for the '<em><b>Clamps Per End</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__CLAMPS_PER_END = eINSTANCE.getExhaustSectionRun_ClampsPerEnd();

		/**
		 * The meta object literal for the '<em><b>Clamp Band Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH = eINSTANCE.getExhaustSectionRun_ClampBandWidth();

		/**
		 * The meta object literal for the '<em><b>Support Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__SUPPORT_SPACING = eINSTANCE.getExhaustSectionRun_SupportSpacing();

		/**
		 * The meta object literal for the '<em><b>Sag Free</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__SAG_FREE = eINSTANCE.getExhaustSectionRun_SagFree();

		/**
		 * The meta object literal for the '<em><b>Installed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__INSTALLED_ON = eINSTANCE.getExhaustSectionRun_InstalledOn();

		/**
		 * The meta object literal for the '<em><b>Gas Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_SECTION_RUN__GAS_TEMPERATURE = eINSTANCE.getExhaustSectionRun_GasTemperature();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ExhaustBendImpl <em>Exhaust Bend</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ExhaustBendImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustBend()
		 * @generated
		 */
		EClass EXHAUST_BEND = eINSTANCE.getExhaustBend();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_BEND__KIND = eINSTANCE.getExhaustBend_Kind();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_BEND__COUNT = eINSTANCE.getExhaustBend_Count();

		/**
		 * The meta object literal for the '<em><b>Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_BEND__RADIUS = eINSTANCE.getExhaustBend_Radius();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.MufflerImpl <em>Muffler</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.MufflerImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getMuffler()
		 * @generated
		 */
		EClass MUFFLER = eINSTANCE.getMuffler();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__KIND = eINSTANCE.getMuffler_Kind();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MUFFLER__POSITION = eINSTANCE.getMuffler_Position();

		/**
		 * The meta object literal for the '<em><b>Inlet Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__INLET_BORE = eINSTANCE.getMuffler_InletBore();

		/**
		 * The meta object literal for the '<em><b>Outlet Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__OUTLET_BORE = eINSTANCE.getMuffler_OutletBore();

		/**
		 * The meta object literal for the '<em><b>Volume To Inlet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__VOLUME_TO_INLET = eINSTANCE.getMuffler_VolumeToInlet();

		/**
		 * The meta object literal for the '<em><b>Residue Fraction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__RESIDUE_FRACTION = eINSTANCE.getMuffler_ResidueFraction();

		/**
		 * The meta object literal for the '<em><b>Bottom Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__BOTTOM_HEIGHT = eINSTANCE.getMuffler_BottomHeight();

		/**
		 * The meta object literal for the '<em><b>Inlet Invert Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__INLET_INVERT_HEIGHT = eINSTANCE.getMuffler_InletInvertHeight();

		/**
		 * The meta object literal for the '<em><b>Distance From Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__DISTANCE_FROM_ENGINE = eINSTANCE.getMuffler_DistanceFromEngine();

		/**
		 * The meta object literal for the '<em><b>Lowest Point</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__LOWEST_POINT = eINSTANCE.getMuffler_LowestPoint();

		/**
		 * The meta object literal for the '<em><b>Marked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__MARKED = eINSTANCE.getMuffler_Marked();

		/**
		 * The meta object literal for the '<em><b>Drain Plug</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__DRAIN_PLUG = eINSTANCE.getMuffler_DrainPlug();

		/**
		 * The meta object literal for the '<em><b>Drain Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__DRAIN_POSITION = eINSTANCE.getMuffler_DrainPosition();

		/**
		 * The meta object literal for the '<em><b>Level After Stop Below Inlet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET = eINSTANCE.getMuffler_LevelAfterStopBelowInlet();

		/**
		 * The meta object literal for the '<em><b>Supported</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__SUPPORTED = eINSTANCE.getMuffler_Supported();

		/**
		 * The meta object literal for the '<em><b>Pressure Loss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MUFFLER__PRESSURE_LOSS = eINSTANCE.getMuffler_PressureLoss();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.RiserImpl <em>Riser</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.RiserImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getRiser()
		 * @generated
		 */
		EClass RISER = eINSTANCE.getRiser();

		/**
		 * The meta object literal for the '<em><b>Dry Crest Inside</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RISER__DRY_CREST_INSIDE = eINSTANCE.getRiser_DryCrestInside();

		/**
		 * The meta object literal for the '<em><b>Injection On Falling Leg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RISER__INJECTION_ON_FALLING_LEG = eINSTANCE.getRiser_InjectionOnFallingLeg();

		/**
		 * The meta object literal for the '<em><b>Injection Points Down</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RISER__INJECTION_POINTS_DOWN = eINSTANCE.getRiser_InjectionPointsDown();

		/**
		 * The meta object literal for the '<em><b>Injection Drop To Muffler</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RISER__INJECTION_DROP_TO_MUFFLER = eINSTANCE.getRiser_InjectionDropToMuffler();

		/**
		 * The meta object literal for the '<em><b>Lift Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RISER__LIFT_HEIGHT = eINSTANCE.getRiser_LiftHeight();

		/**
		 * The meta object literal for the '<em><b>Elbow Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RISER__ELBOW_BORE = eINSTANCE.getRiser_ElbowBore();

		/**
		 * The meta object literal for the '<em><b>Elbow Inspected On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RISER__ELBOW_INSPECTED_ON = eINSTANCE.getRiser_ElbowInspectedOn();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ExhaustCrestImpl <em>Exhaust Crest</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ExhaustCrestImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustCrest()
		 * @generated
		 */
		EClass EXHAUST_CREST = eINSTANCE.getExhaustCrest();

		/**
		 * The meta object literal for the '<em><b>Inside Bottom</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_CREST__INSIDE_BOTTOM = eINSTANCE.getExhaustCrest_InsideBottom();

		/**
		 * The meta object literal for the '<em><b>Vented</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_CREST__VENTED = eINSTANCE.getExhaustCrest_Vented();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ExhaustOutletImpl <em>Exhaust Outlet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ExhaustOutletImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustOutlet()
		 * @generated
		 */
		EClass EXHAUST_OUTLET = eINSTANCE.getExhaustOutlet();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__PLACE = eINSTANCE.getExhaustOutlet_Place();

		/**
		 * The meta object literal for the '<em><b>Inside Bottom</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXHAUST_OUTLET__INSIDE_BOTTOM = eINSTANCE.getExhaustOutlet_InsideBottom();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__BORE = eINSTANCE.getExhaustOutlet_Bore();

		/**
		 * The meta object literal for the '<em><b>Anti Surge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__ANTI_SURGE = eINSTANCE.getExhaustOutlet_AntiSurge();

		/**
		 * The meta object literal for the '<em><b>Closed By Valve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__CLOSED_BY_VALVE = eINSTANCE.getExhaustOutlet_ClosedByValve();

		/**
		 * The meta object literal for the '<em><b>Under Swim Platform</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__UNDER_SWIM_PLATFORM = eINSTANCE.getExhaustOutlet_UnderSwimPlatform();

		/**
		 * The meta object literal for the '<em><b>Near Openings</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__NEAR_OPENINGS = eINSTANCE.getExhaustOutlet_NearOpenings();

		/**
		 * The meta object literal for the '<em><b>Distance To Opening</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__DISTANCE_TO_OPENING = eINSTANCE.getExhaustOutlet_DistanceToOpening();

		/**
		 * The meta object literal for the '<em><b>Water Visible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__WATER_VISIBLE = eINSTANCE.getExhaustOutlet_WaterVisible();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXHAUST_OUTLET__MATERIAL = eINSTANCE.getExhaustOutlet_Material();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.SeparatorDrainImpl <em>Separator Drain</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.SeparatorDrainImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getSeparatorDrain()
		 * @generated
		 */
		EClass SEPARATOR_DRAIN = eINSTANCE.getSeparatorDrain();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEPARATOR_DRAIN__BORE = eINSTANCE.getSeparatorDrain_Bore();

		/**
		 * The meta object literal for the '<em><b>Base Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEPARATOR_DRAIN__BASE_HEIGHT = eINSTANCE.getSeparatorDrain_BaseHeight();

		/**
		 * The meta object literal for the '<em><b>Own Seacock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEPARATOR_DRAIN__OWN_SEACOCK = eINSTANCE.getSeparatorDrain_OwnSeacock();

		/**
		 * The meta object literal for the '<em><b>Falls All The Way</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEPARATOR_DRAIN__FALLS_ALL_THE_WAY = eINSTANCE.getSeparatorDrain_FallsAllTheWay();

		/**
		 * The meta object literal for the '<em><b>Gas Side Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEPARATOR_DRAIN__GAS_SIDE_PRESSURE = eINSTANCE.getSeparatorDrain_GasSidePressure();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.VentilationImpl <em>Ventilation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.VentilationImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getVentilation()
		 * @generated
		 */
		EClass VENTILATION = eINSTANCE.getVentilation();

		/**
		 * The meta object literal for the '<em><b>Net Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__NET_VOLUME = eINSTANCE.getVentilation_NetVolume();

		/**
		 * The meta object literal for the '<em><b>Gross Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__GROSS_VOLUME = eINSTANCE.getVentilation_GrossVolume();

		/**
		 * The meta object literal for the '<em><b>Open Area To Atmosphere</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__OPEN_AREA_TO_ATMOSPHERE = eINSTANCE.getVentilation_OpenAreaToAtmosphere();

		/**
		 * The meta object literal for the '<em><b>Connected Opening Fraction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__CONNECTED_OPENING_FRACTION = eINSTANCE.getVentilation_ConnectedOpeningFraction();

		/**
		 * The meta object literal for the '<em><b>Compartment Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__COMPARTMENT_HEIGHT = eINSTANCE.getVentilation_CompartmentHeight();

		/**
		 * The meta object literal for the '<em><b>Bilge Water Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__BILGE_WATER_HEIGHT = eINSTANCE.getVentilation_BilgeWaterHeight();

		/**
		 * The meta object literal for the '<em><b>Ducts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference VENTILATION__DUCTS = eINSTANCE.getVentilation_Ducts();

		/**
		 * The meta object literal for the '<em><b>Blower Rated Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__BLOWER_RATED_FLOW = eINSTANCE.getVentilation_BlowerRatedFlow();

		/**
		 * The meta object literal for the '<em><b>Blower Measured Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__BLOWER_MEASURED_FLOW = eINSTANCE.getVentilation_BlowerMeasuredFlow();

		/**
		 * The meta object literal for the '<em><b>Blower Label At Each Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__BLOWER_LABEL_AT_EACH_START = eINSTANCE.getVentilation_BlowerLabelAtEachStart();

		/**
		 * The meta object literal for the '<em><b>Blower Interlocked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__BLOWER_INTERLOCKED = eINSTANCE.getVentilation_BlowerInterlocked();

		/**
		 * The meta object literal for the '<em><b>Blower Ignition Protected</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__BLOWER_IGNITION_PROTECTED = eINSTANCE.getVentilation_BlowerIgnitionProtected();

		/**
		 * The meta object literal for the '<em><b>Sealed From Accommodation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__SEALED_FROM_ACCOMMODATION = eINSTANCE.getVentilation_SealedFromAccommodation();

		/**
		 * The meta object literal for the '<em><b>Supply From Outside</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__SUPPLY_FROM_OUTSIDE = eINSTANCE.getVentilation_SupplyFromOutside();

		/**
		 * The meta object literal for the '<em><b>Supply Area Total</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__SUPPLY_AREA_TOTAL = eINSTANCE.getVentilation_SupplyAreaTotal();

		/**
		 * The meta object literal for the '<em><b>Exhaust Area Total</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__EXHAUST_AREA_TOTAL = eINSTANCE.getVentilation_ExhaustAreaTotal();

		/**
		 * The meta object literal for the '<em><b>Natural Draught</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__NATURAL_DRAUGHT = eINSTANCE.getVentilation_NaturalDraught();

		/**
		 * The meta object literal for the '<em><b>Outside Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__OUTSIDE_TEMPERATURE = eINSTANCE.getVentilation_OutsideTemperature();

		/**
		 * The meta object literal for the '<em><b>Compartment Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__COMPARTMENT_TEMPERATURE = eINSTANCE.getVentilation_CompartmentTemperature();

		/**
		 * The meta object literal for the '<em><b>Air Inlet Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__AIR_INLET_TEMPERATURE = eINSTANCE.getVentilation_AirInletTemperature();

		/**
		 * The meta object literal for the '<em><b>Depression</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__DEPRESSION = eINSTANCE.getVentilation_Depression();

		/**
		 * The meta object literal for the '<em><b>Design Ambient</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__DESIGN_AMBIENT = eINSTANCE.getVentilation_DesignAmbient();

		/**
		 * The meta object literal for the '<em><b>Ducts Low And High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__DUCTS_LOW_AND_HIGH = eINSTANCE.getVentilation_DuctsLowAndHigh();

		/**
		 * The meta object literal for the '<em><b>Clear Of Exhaust Outlet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__CLEAR_OF_EXHAUST_OUTLET = eINSTANCE.getVentilation_ClearOfExhaustOutlet();

		/**
		 * The meta object literal for the '<em><b>Ignition Protected Components</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__IGNITION_PROTECTED_COMPONENTS = eINSTANCE.getVentilation_IgnitionProtectedComponents();

		/**
		 * The meta object literal for the '<em><b>Cranking Motor Fitted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__CRANKING_MOTOR_FITTED = eINSTANCE.getVentilation_CrankingMotorFitted();

		/**
		 * The meta object literal for the '<em><b>Fan Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VENTILATION__FAN_FLOW = eINSTANCE.getVentilation_FanFlow();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.AirDuctImpl <em>Air Duct</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.AirDuctImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getAirDuct()
		 * @generated
		 */
		EClass AIR_DUCT = eINSTANCE.getAirDuct();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__NAME = eINSTANCE.getAirDuct_Name();

		/**
		 * The meta object literal for the '<em><b>Function</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__FUNCTION = eINSTANCE.getAirDuct_Function();

		/**
		 * The meta object literal for the '<em><b>Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__AREA = eINSTANCE.getAirDuct_Area();

		/**
		 * The meta object literal for the '<em><b>End Fitting Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__END_FITTING_AREA = eINSTANCE.getAirDuct_EndFittingArea();

		/**
		 * The meta object literal for the '<em><b>Flexible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__FLEXIBLE = eINSTANCE.getAirDuct_Flexible();

		/**
		 * The meta object literal for the '<em><b>Mouth Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__MOUTH_HEIGHT = eINSTANCE.getAirDuct_MouthHeight();

		/**
		 * The meta object literal for the '<em><b>Terminates Outside</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AIR_DUCT__TERMINATES_OUTSIDE = eINSTANCE.getAirDuct_TerminatesOutside();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.MountingImpl <em>Mounting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.MountingImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getMounting()
		 * @generated
		 */
		EClass MOUNTING = eINSTANCE.getMounting();

		/**
		 * The meta object literal for the '<em><b>Beds Rigid</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__BEDS_RIGID = eINSTANCE.getMounting_BedsRigid();

		/**
		 * The meta object literal for the '<em><b>Mounts Aligned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__MOUNTS_ALIGNED = eINSTANCE.getMounting_MountsAligned();

		/**
		 * The meta object literal for the '<em><b>Clearance Around</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__CLEARANCE_AROUND = eINSTANCE.getMounting_ClearanceAround();

		/**
		 * The meta object literal for the '<em><b>Flexible Connections</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__FLEXIBLE_CONNECTIONS = eINSTANCE.getMounting_FlexibleConnections();

		/**
		 * The meta object literal for the '<em><b>Drip Tray</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__DRIP_TRAY = eINSTANCE.getMounting_DripTray();

		/**
		 * The meta object literal for the '<em><b>Access For Service</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__ACCESS_FOR_SERVICE = eINSTANCE.getMounting_AccessForService();

		/**
		 * The meta object literal for the '<em><b>Bonding Conductor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__BONDING_CONDUCTOR = eINSTANCE.getMounting_BondingConductor();

		/**
		 * The meta object literal for the '<em><b>Bonded To Common Ground</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__BONDED_TO_COMMON_GROUND = eINSTANCE.getMounting_BondedToCommonGround();

		/**
		 * The meta object literal for the '<em><b>Common Negative Link</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__COMMON_NEGATIVE_LINK = eINSTANCE.getMounting_CommonNegativeLink();

		/**
		 * The meta object literal for the '<em><b>Dc Negative Isolated</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__DC_NEGATIVE_ISOLATED = eINSTANCE.getMounting_DcNegativeIsolated();

		/**
		 * The meta object literal for the '<em><b>Installed Angle Fore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__INSTALLED_ANGLE_FORE = eINSTANCE.getMounting_InstalledAngleFore();

		/**
		 * The meta object literal for the '<em><b>Installed Angle Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__INSTALLED_ANGLE_SIDE = eINSTANCE.getMounting_InstalledAngleSide();

		/**
		 * The meta object literal for the '<em><b>Height Above Bilge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__HEIGHT_ABOVE_BILGE = eINSTANCE.getMounting_HeightAboveBilge();

		/**
		 * The meta object literal for the '<em><b>Anodes Fitted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__ANODES_FITTED = eINSTANCE.getMounting_AnodesFitted();

		/**
		 * The meta object literal for the '<em><b>Labels Posted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__LABELS_POSTED = eINSTANCE.getMounting_LabelsPosted();

		/**
		 * The meta object literal for the '<em><b>Rotating Parts Guarded</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOUNTING__ROTATING_PARTS_GUARDED = eINSTANCE.getMounting_RotatingPartsGuarded();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.AcOutputImpl <em>Ac Output</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.AcOutputImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getAcOutput()
		 * @generated
		 */
		EClass AC_OUTPUT = eINSTANCE.getAcOutput();

		/**
		 * The meta object literal for the '<em><b>Transfer</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AC_OUTPUT__TRANSFER = eINSTANCE.getAcOutput_Transfer();

		/**
		 * The meta object literal for the '<em><b>Protection Device</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__PROTECTION_DEVICE = eINSTANCE.getAcOutput_ProtectionDevice();

		/**
		 * The meta object literal for the '<em><b>Protection Rating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__PROTECTION_RATING = eINSTANCE.getAcOutput_ProtectionRating();

		/**
		 * The meta object literal for the '<em><b>Trip Curve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__TRIP_CURVE = eINSTANCE.getAcOutput_TripCurve();

		/**
		 * The meta object literal for the '<em><b>Protection Poles</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__PROTECTION_POLES = eINSTANCE.getAcOutput_ProtectionPoles();

		/**
		 * The meta object literal for the '<em><b>Protection Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__PROTECTION_DISTANCE = eINSTANCE.getAcOutput_ProtectionDistance();

		/**
		 * The meta object literal for the '<em><b>Residual Current Device</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__RESIDUAL_CURRENT_DEVICE = eINSTANCE.getAcOutput_ResidualCurrentDevice();

		/**
		 * The meta object literal for the '<em><b>Residual Trip Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__RESIDUAL_TRIP_CURRENT = eINSTANCE.getAcOutput_ResidualTripCurrent();

		/**
		 * The meta object literal for the '<em><b>Residual Trip Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__RESIDUAL_TRIP_TIME = eINSTANCE.getAcOutput_ResidualTripTime();

		/**
		 * The meta object literal for the '<em><b>Output Cable</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AC_OUTPUT__OUTPUT_CABLE = eINSTANCE.getAcOutput_OutputCable();

		/**
		 * The meta object literal for the '<em><b>Neutral Bond</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__NEUTRAL_BOND = eINSTANCE.getAcOutput_NeutralBond();

		/**
		 * The meta object literal for the '<em><b>Protective Conductor Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE = eINSTANCE.getAcOutput_ProtectiveConductorSize();

		/**
		 * The meta object literal for the '<em><b>Protective Conductor Resistance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE = eINSTANCE.getAcOutput_ProtectiveConductorResistance();

		/**
		 * The meta object literal for the '<em><b>Neutral Ground Conductor Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE = eINSTANCE.getAcOutput_NeutralGroundConductorSize();

		/**
		 * The meta object literal for the '<em><b>Insulation Resistance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__INSULATION_RESISTANCE = eINSTANCE.getAcOutput_InsulationResistance();

		/**
		 * The meta object literal for the '<em><b>Insulation Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__INSULATION_TEMPERATURE = eINSTANCE.getAcOutput_InsulationTemperature();

		/**
		 * The meta object literal for the '<em><b>Polarity Indicator</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__POLARITY_INDICATOR = eINSTANCE.getAcOutput_PolarityIndicator();

		/**
		 * The meta object literal for the '<em><b>Polarity Tested</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__POLARITY_TESTED = eINSTANCE.getAcOutput_PolarityTested();

		/**
		 * The meta object literal for the '<em><b>Voltmeter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__VOLTMETER = eINSTANCE.getAcOutput_Voltmeter();

		/**
		 * The meta object literal for the '<em><b>Ammeter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__AMMETER = eINSTANCE.getAcOutput_Ammeter();

		/**
		 * The meta object literal for the '<em><b>Frequency Meter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__FREQUENCY_METER = eINSTANCE.getAcOutput_FrequencyMeter();

		/**
		 * The meta object literal for the '<em><b>Name Plate Readable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__NAME_PLATE_READABLE = eINSTANCE.getAcOutput_NamePlateReadable();

		/**
		 * The meta object literal for the '<em><b>Earthed Parts Bonded</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__EARTHED_PARTS_BONDED = eINSTANCE.getAcOutput_EarthedPartsBonded();

		/**
		 * The meta object literal for the '<em><b>Ground Detection</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__GROUND_DETECTION = eINSTANCE.getAcOutput_GroundDetection();

		/**
		 * The meta object literal for the '<em><b>Loads</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AC_OUTPUT__LOADS = eINSTANCE.getAcOutput_Loads();

		/**
		 * The meta object literal for the '<em><b>No Load Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__NO_LOAD_VOLTAGE = eINSTANCE.getAcOutput_NoLoadVoltage();

		/**
		 * The meta object literal for the '<em><b>No Load Frequency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__NO_LOAD_FREQUENCY = eINSTANCE.getAcOutput_NoLoadFrequency();

		/**
		 * The meta object literal for the '<em><b>Leg ACurrent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__LEG_ACURRENT = eINSTANCE.getAcOutput_LegACurrent();

		/**
		 * The meta object literal for the '<em><b>Leg BCurrent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__LEG_BCURRENT = eINSTANCE.getAcOutput_LegBCurrent();

		/**
		 * The meta object literal for the '<em><b>Shore Inlet Residual Device</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE = eINSTANCE.getAcOutput_ShoreInletResidualDevice();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.TransferSwitchImpl <em>Transfer Switch</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.TransferSwitchImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getTransferSwitch()
		 * @generated
		 */
		EClass TRANSFER_SWITCH = eINSTANCE.getTransferSwitch();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSFER_SWITCH__KIND = eINSTANCE.getTransferSwitch_Kind();

		/**
		 * The meta object literal for the '<em><b>Poles</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSFER_SWITCH__POLES = eINSTANCE.getTransferSwitch_Poles();

		/**
		 * The meta object literal for the '<em><b>Interlocked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSFER_SWITCH__INTERLOCKED = eINSTANCE.getTransferSwitch_Interlocked();

		/**
		 * The meta object literal for the '<em><b>Back Feed Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSFER_SWITCH__BACK_FEED_VOLTAGE = eINSTANCE.getTransferSwitch_BackFeedVoltage();

		/**
		 * The meta object literal for the '<em><b>Tested</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSFER_SWITCH__TESTED = eINSTANCE.getTransferSwitch_Tested();

		/**
		 * The meta object literal for the '<em><b>Rated Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSFER_SWITCH__RATED_CURRENT = eINSTANCE.getTransferSwitch_RatedCurrent();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ElectricalLoadImpl <em>Electrical Load</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ElectricalLoadImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getElectricalLoad()
		 * @generated
		 */
		EClass ELECTRICAL_LOAD = eINSTANCE.getElectricalLoad();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__NAME = eINSTANCE.getElectricalLoad_Name();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__KIND = eINSTANCE.getElectricalLoad_Kind();

		/**
		 * The meta object literal for the '<em><b>Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__POWER = eINSTANCE.getElectricalLoad_Power();

		/**
		 * The meta object literal for the '<em><b>Efficiency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__EFFICIENCY = eINSTANCE.getElectricalLoad_Efficiency();

		/**
		 * The meta object literal for the '<em><b>Power Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__POWER_FACTOR = eINSTANCE.getElectricalLoad_PowerFactor();

		/**
		 * The meta object literal for the '<em><b>Demand Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__DEMAND_FACTOR = eINSTANCE.getElectricalLoad_DemandFactor();

		/**
		 * The meta object literal for the '<em><b>Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__GROUP = eINSTANCE.getElectricalLoad_Group();

		/**
		 * The meta object literal for the '<em><b>Exclusive With</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__EXCLUSIVE_WITH = eINSTANCE.getElectricalLoad_ExclusiveWith();

		/**
		 * The meta object literal for the '<em><b>Phase</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__PHASE = eINSTANCE.getElectricalLoad_Phase();

		/**
		 * The meta object literal for the '<em><b>Motor Horsepower</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__MOTOR_HORSEPOWER = eINSTANCE.getElectricalLoad_MotorHorsepower();

		/**
		 * The meta object literal for the '<em><b>Code Letter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__CODE_LETTER = eINSTANCE.getElectricalLoad_CodeLetter();

		/**
		 * The meta object literal for the '<em><b>Locked Rotor Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT = eINSTANCE.getElectricalLoad_LockedRotorCurrent();

		/**
		 * The meta object literal for the '<em><b>Starting</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__STARTING = eINSTANCE.getElectricalLoad_Starting();

		/**
		 * The meta object literal for the '<em><b>Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__VOLTAGE = eINSTANCE.getElectricalLoad_Voltage();

		/**
		 * The meta object literal for the '<em><b>Condition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELECTRICAL_LOAD__CONDITION = eINSTANCE.getElectricalLoad_Condition();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.AlarmsAndSafetyImpl <em>Alarms And Safety</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.AlarmsAndSafetyImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getAlarmsAndSafety()
		 * @generated
		 */
		EClass ALARMS_AND_SAFETY = eINSTANCE.getAlarmsAndSafety();

		/**
		 * The meta object literal for the '<em><b>Alarms</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ALARMS_AND_SAFETY__ALARMS = eINSTANCE.getAlarmsAndSafety_Alarms();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide In Every Space</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE = eINSTANCE.getAlarmsAndSafety_CarbonMonoxideInEverySpace();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide Marked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED = eINSTANCE.getAlarmsAndSafety_CarbonMonoxideMarked();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide Expiry</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY = eINSTANCE.getAlarmsAndSafety_CarbonMonoxideExpiry();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide Always Powered</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED = eINSTANCE.getAlarmsAndSafety_CarbonMonoxideAlwaysPowered();

		/**
		 * The meta object literal for the '<em><b>Habitable Spaces</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__HABITABLE_SPACES = eINSTANCE.getAlarmsAndSafety_HabitableSpaces();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide Alarms</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS = eINSTANCE.getAlarmsAndSafety_CarbonMonoxideAlarms();

		/**
		 * The meta object literal for the '<em><b>Vapour Detector</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__VAPOUR_DETECTOR = eINSTANCE.getAlarmsAndSafety_VapourDetector();

		/**
		 * The meta object literal for the '<em><b>Vapour Sensor Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW = eINSTANCE.getAlarmsAndSafety_VapourSensorLow();

		/**
		 * The meta object literal for the '<em><b>Vapour Before Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__VAPOUR_BEFORE_START = eINSTANCE.getAlarmsAndSafety_VapourBeforeStart();

		/**
		 * The meta object literal for the '<em><b>Fire Extinguisher</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__FIRE_EXTINGUISHER = eINSTANCE.getAlarmsAndSafety_FireExtinguisher();

		/**
		 * The meta object literal for the '<em><b>Fixed Fire System</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM = eINSTANCE.getAlarmsAndSafety_FixedFireSystem();

		/**
		 * The meta object literal for the '<em><b>Fire System Stops Set</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET = eINSTANCE.getAlarmsAndSafety_FireSystemStopsSet();

		/**
		 * The meta object literal for the '<em><b>Fire Discharge Port</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT = eINSTANCE.getAlarmsAndSafety_FireDischargePort();

		/**
		 * The meta object literal for the '<em><b>Remote Stop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__REMOTE_STOP = eINSTANCE.getAlarmsAndSafety_RemoteStop();

		/**
		 * The meta object literal for the '<em><b>Warning Labels</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARMS_AND_SAFETY__WARNING_LABELS = eINSTANCE.getAlarmsAndSafety_WarningLabels();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.AlarmDeviceImpl <em>Alarm Device</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.AlarmDeviceImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getAlarmDevice()
		 * @generated
		 */
		EClass ALARM_DEVICE = eINSTANCE.getAlarmDevice();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARM_DEVICE__KIND = eINSTANCE.getAlarmDevice_Kind();

		/**
		 * The meta object literal for the '<em><b>Location</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARM_DEVICE__LOCATION = eINSTANCE.getAlarmDevice_Location();

		/**
		 * The meta object literal for the '<em><b>Setting</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARM_DEVICE__SETTING = eINSTANCE.getAlarmDevice_Setting();

		/**
		 * The meta object literal for the '<em><b>Test Result</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARM_DEVICE__TEST_RESULT = eINSTANCE.getAlarmDevice_TestResult();

		/**
		 * The meta object literal for the '<em><b>Tested On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARM_DEVICE__TESTED_ON = eINSTANCE.getAlarmDevice_TestedOn();

		/**
		 * The meta object literal for the '<em><b>Expires On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALARM_DEVICE__EXPIRES_ON = eINSTANCE.getAlarmDevice_ExpiresOn();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.InspectionAnswerImpl <em>Inspection Answer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.InspectionAnswerImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getInspectionAnswer()
		 * @generated
		 */
		EClass INSPECTION_ANSWER = eINSTANCE.getInspectionAnswer();

		/**
		 * The meta object literal for the '<em><b>Question</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__QUESTION = eINSTANCE.getInspectionAnswer_Question();

		/**
		 * The meta object literal for the '<em><b>Answer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__ANSWER = eINSTANCE.getInspectionAnswer_Answer();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__NOTE = eINSTANCE.getInspectionAnswer_Note();

		/**
		 * The meta object literal for the '<em><b>Answered By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__ANSWERED_BY = eINSTANCE.getInspectionAnswer_AnsweredBy();

		/**
		 * The meta object literal for the '<em><b>Answered On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__ANSWERED_ON = eINSTANCE.getInspectionAnswer_AnsweredOn();

		/**
		 * The meta object literal for the '<em><b>Photographs</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference INSPECTION_ANSWER__PHOTOGRAPHS = eINSTANCE.getInspectionAnswer_Photographs();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.TrialImpl <em>Trial</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.TrialImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getTrial()
		 * @generated
		 */
		EClass TRIAL = eINSTANCE.getTrial();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__DATE = eINSTANCE.getTrial_Date();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__PLACE = eINSTANCE.getTrial_Place();

		/**
		 * The meta object literal for the '<em><b>Location</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__LOCATION = eINSTANCE.getTrial_Location();

		/**
		 * The meta object literal for the '<em><b>People</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__PEOPLE = eINSTANCE.getTrial_People();

		/**
		 * The meta object literal for the '<em><b>Sea Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__SEA_TEMPERATURE = eINSTANCE.getTrial_SeaTemperature();

		/**
		 * The meta object literal for the '<em><b>Outside Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__OUTSIDE_TEMPERATURE = eINSTANCE.getTrial_OutsideTemperature();

		/**
		 * The meta object literal for the '<em><b>Barometric Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__BAROMETRIC_PRESSURE = eINSTANCE.getTrial_BarometricPressure();

		/**
		 * The meta object literal for the '<em><b>Relative Humidity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__RELATIVE_HUMIDITY = eINSTANCE.getTrial_RelativeHumidity();

		/**
		 * The meta object literal for the '<em><b>Head Of Water</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__HEAD_OF_WATER = eINSTANCE.getTrial_HeadOfWater();

		/**
		 * The meta object literal for the '<em><b>Procedure</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__PROCEDURE = eINSTANCE.getTrial_Procedure();

		/**
		 * The meta object literal for the '<em><b>Priming</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__PRIMING = eINSTANCE.getTrial_Priming();

		/**
		 * The meta object literal for the '<em><b>Attempts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__ATTEMPTS = eINSTANCE.getTrial_Attempts();

		/**
		 * The meta object literal for the '<em><b>Load Steps</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__LOAD_STEPS = eINSTANCE.getTrial_LoadSteps();

		/**
		 * The meta object literal for the '<em><b>Shutdown Tests</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__SHUTDOWN_TESTS = eINSTANCE.getTrial_ShutdownTests();

		/**
		 * The meta object literal for the '<em><b>Sea Run</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__SEA_RUN = eINSTANCE.getTrial_SeaRun();

		/**
		 * The meta object literal for the '<em><b>Coolant Level Cold</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__COOLANT_LEVEL_COLD = eINSTANCE.getTrial_CoolantLevelCold();

		/**
		 * The meta object literal for the '<em><b>Coolant Level Hot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__COOLANT_LEVEL_HOT = eINSTANCE.getTrial_CoolantLevelHot();

		/**
		 * The meta object literal for the '<em><b>Coolant Level Cold Again</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__COOLANT_LEVEL_COLD_AGAIN = eINSTANCE.getTrial_CoolantLevelColdAgain();

		/**
		 * The meta object literal for the '<em><b>Leaks Cold</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__LEAKS_COLD = eINSTANCE.getTrial_LeaksCold();

		/**
		 * The meta object literal for the '<em><b>Leaks Hot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__LEAKS_HOT = eINSTANCE.getTrial_LeaksHot();

		/**
		 * The meta object literal for the '<em><b>Water At Outlet After</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__WATER_AT_OUTLET_AFTER = eINSTANCE.getTrial_WaterAtOutletAfter();

		/**
		 * The meta object literal for the '<em><b>Oil Pressure After</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__OIL_PRESSURE_AFTER = eINSTANCE.getTrial_OilPressureAfter();

		/**
		 * The meta object literal for the '<em><b>Muffler Level Checked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__MUFFLER_LEVEL_CHECKED = eINSTANCE.getTrial_MufflerLevelChecked();

		/**
		 * The meta object literal for the '<em><b>Remarks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__REMARKS = eINSTANCE.getTrial_Remarks();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide Cabin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CARBON_MONOXIDE_CABIN = eINSTANCE.getTrial_CarbonMonoxideCabin();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ProcedureStepImpl <em>Procedure Step</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ProcedureStepImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getProcedureStep()
		 * @generated
		 */
		EClass PROCEDURE_STEP = eINSTANCE.getProcedureStep();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCEDURE_STEP__NUMBER = eINSTANCE.getProcedureStep_Number();

		/**
		 * The meta object literal for the '<em><b>Step</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCEDURE_STEP__STEP = eINSTANCE.getProcedureStep_Step();

		/**
		 * The meta object literal for the '<em><b>Done</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCEDURE_STEP__DONE = eINSTANCE.getProcedureStep_Done();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCEDURE_STEP__AT = eINSTANCE.getProcedureStep_At();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCEDURE_STEP__NOTE = eINSTANCE.getProcedureStep_Note();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.FuelPrimingImpl <em>Fuel Priming</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.FuelPrimingImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelPriming()
		 * @generated
		 */
		EClass FUEL_PRIMING = eINSTANCE.getFuelPriming();

		/**
		 * The meta object literal for the '<em><b>Key Cycles</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__KEY_CYCLES = eINSTANCE.getFuelPriming_KeyCycles();

		/**
		 * The meta object literal for the '<em><b>Cycle Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__CYCLE_TIME = eINSTANCE.getFuelPriming_CycleTime();

		/**
		 * The meta object literal for the '<em><b>Feed Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__FEED_PRESSURE = eINSTANCE.getFuelPriming_FeedPressure();

		/**
		 * The meta object literal for the '<em><b>Rail Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__RAIL_PRESSURE = eINSTANCE.getFuelPriming_RailPressure();

		/**
		 * The meta object literal for the '<em><b>Held For</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__HELD_FOR = eINSTANCE.getFuelPriming_HeldFor();

		/**
		 * The meta object literal for the '<em><b>Bubbles Gone</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__BUBBLES_GONE = eINSTANCE.getFuelPriming_BubblesGone();

		/**
		 * The meta object literal for the '<em><b>Leaks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FUEL_PRIMING__LEAKS = eINSTANCE.getFuelPriming_Leaks();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.CrankingAttemptImpl <em>Cranking Attempt</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.CrankingAttemptImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getCrankingAttempt()
		 * @generated
		 */
		EClass CRANKING_ATTEMPT = eINSTANCE.getCrankingAttempt();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__AT = eINSTANCE.getCrankingAttempt_At();

		/**
		 * The meta object literal for the '<em><b>Duration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__DURATION = eINSTANCE.getCrankingAttempt_Duration();

		/**
		 * The meta object literal for the '<em><b>Rest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__REST = eINSTANCE.getCrankingAttempt_Rest();

		/**
		 * The meta object literal for the '<em><b>Seacock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__SEACOCK = eINSTANCE.getCrankingAttempt_Seacock();

		/**
		 * The meta object literal for the '<em><b>Fired</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__FIRED = eINSTANCE.getCrankingAttempt_Fired();

		/**
		 * The meta object literal for the '<em><b>Lowest Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__LOWEST_VOLTAGE = eINSTANCE.getCrankingAttempt_LowestVoltage();

		/**
		 * The meta object literal for the '<em><b>Muffler Drained</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CRANKING_ATTEMPT__MUFFLER_DRAINED = eINSTANCE.getCrankingAttempt_MufflerDrained();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.LoadStepImpl <em>Load Step</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.LoadStepImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getLoadStep()
		 * @generated
		 */
		EClass LOAD_STEP = eINSTANCE.getLoadStep();

		/**
		 * The meta object literal for the '<em><b>Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOAD_STEP__LOAD = eINSTANCE.getLoadStep_Load();

		/**
		 * The meta object literal for the '<em><b>Dwell</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOAD_STEP__DWELL = eINSTANCE.getLoadStep_Dwell();

		/**
		 * The meta object literal for the '<em><b>Readings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOAD_STEP__READINGS = eINSTANCE.getLoadStep_Readings();

		/**
		 * The meta object literal for the '<em><b>Remarks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOAD_STEP__REMARKS = eINSTANCE.getLoadStep_Remarks();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ReadingImpl <em>Reading</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ReadingImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getReading()
		 * @generated
		 */
		EClass READING = eINSTANCE.getReading();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__AT = eINSTANCE.getReading_At();

		/**
		 * The meta object literal for the '<em><b>Voltage1</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VOLTAGE1 = eINSTANCE.getReading_Voltage1();

		/**
		 * The meta object literal for the '<em><b>Voltage2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VOLTAGE2 = eINSTANCE.getReading_Voltage2();

		/**
		 * The meta object literal for the '<em><b>Voltage3</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VOLTAGE3 = eINSTANCE.getReading_Voltage3();

		/**
		 * The meta object literal for the '<em><b>Current1</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CURRENT1 = eINSTANCE.getReading_Current1();

		/**
		 * The meta object literal for the '<em><b>Current2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CURRENT2 = eINSTANCE.getReading_Current2();

		/**
		 * The meta object literal for the '<em><b>Current3</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CURRENT3 = eINSTANCE.getReading_Current3();

		/**
		 * The meta object literal for the '<em><b>Frequency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__FREQUENCY = eINSTANCE.getReading_Frequency();

		/**
		 * The meta object literal for the '<em><b>Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__POWER = eINSTANCE.getReading_Power();

		/**
		 * The meta object literal for the '<em><b>Power Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__POWER_FACTOR = eINSTANCE.getReading_PowerFactor();

		/**
		 * The meta object literal for the '<em><b>Oil Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__OIL_PRESSURE = eINSTANCE.getReading_OilPressure();

		/**
		 * The meta object literal for the '<em><b>Coolant Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__COOLANT_TEMPERATURE = eINSTANCE.getReading_CoolantTemperature();

		/**
		 * The meta object literal for the '<em><b>Raw Water In</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__RAW_WATER_IN = eINSTANCE.getReading_RawWaterIn();

		/**
		 * The meta object literal for the '<em><b>Raw Water Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__RAW_WATER_OUT = eINSTANCE.getReading_RawWaterOut();

		/**
		 * The meta object literal for the '<em><b>Exhaust Mixed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__EXHAUST_MIXED = eINSTANCE.getReading_ExhaustMixed();

		/**
		 * The meta object literal for the '<em><b>Exhaust Dry</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__EXHAUST_DRY = eINSTANCE.getReading_ExhaustDry();

		/**
		 * The meta object literal for the '<em><b>Back Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__BACK_PRESSURE = eINSTANCE.getReading_BackPressure();

		/**
		 * The meta object literal for the '<em><b>Compartment Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__COMPARTMENT_TEMPERATURE = eINSTANCE.getReading_CompartmentTemperature();

		/**
		 * The meta object literal for the '<em><b>Outside Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__OUTSIDE_TEMPERATURE = eINSTANCE.getReading_OutsideTemperature();

		/**
		 * The meta object literal for the '<em><b>Compartment Depression</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__COMPARTMENT_DEPRESSION = eINSTANCE.getReading_CompartmentDepression();

		/**
		 * The meta object literal for the '<em><b>Fuel Vacuum</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__FUEL_VACUUM = eINSTANCE.getReading_FuelVacuum();

		/**
		 * The meta object literal for the '<em><b>Raw Water Vacuum</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__RAW_WATER_VACUUM = eINSTANCE.getReading_RawWaterVacuum();

		/**
		 * The meta object literal for the '<em><b>Raw Water Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__RAW_WATER_FLOW = eINSTANCE.getReading_RawWaterFlow();

		/**
		 * The meta object literal for the '<em><b>Battery Voltage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__BATTERY_VOLTAGE = eINSTANCE.getReading_BatteryVoltage();

		/**
		 * The meta object literal for the '<em><b>Charge Current</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CHARGE_CURRENT = eINSTANCE.getReading_ChargeCurrent();

		/**
		 * The meta object literal for the '<em><b>Carbon Monoxide</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CARBON_MONOXIDE = eINSTANCE.getReading_CarbonMonoxide();

		/**
		 * The meta object literal for the '<em><b>Smoke</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__SMOKE = eINSTANCE.getReading_Smoke();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__NOTE = eINSTANCE.getReading_Note();

		/**
		 * The meta object literal for the '<em><b>Instruments</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__INSTRUMENTS = eINSTANCE.getReading_Instruments();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.SeaRunImpl <em>Sea Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.SeaRunImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getSeaRun()
		 * @generated
		 */
		EClass SEA_RUN = eINSTANCE.getSeaRun();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__DATE = eINSTANCE.getSeaRun_Date();

		/**
		 * The meta object literal for the '<em><b>Heel Port</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__HEEL_PORT = eINSTANCE.getSeaRun_HeelPort();

		/**
		 * The meta object literal for the '<em><b>Heel Starboard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__HEEL_STARBOARD = eINSTANCE.getSeaRun_HeelStarboard();

		/**
		 * The meta object literal for the '<em><b>Trim Up</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__TRIM_UP = eINSTANCE.getSeaRun_TrimUp();

		/**
		 * The meta object literal for the '<em><b>Trim Down</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__TRIM_DOWN = eINSTANCE.getSeaRun_TrimDown();

		/**
		 * The meta object literal for the '<em><b>Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__SPEED = eINSTANCE.getSeaRun_Speed();

		/**
		 * The meta object literal for the '<em><b>Water Flowing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__WATER_FLOWING = eINSTANCE.getSeaRun_WaterFlowing();

		/**
		 * The meta object literal for the '<em><b>Water Over Crest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__WATER_OVER_CREST = eINSTANCE.getSeaRun_WaterOverCrest();

		/**
		 * The meta object literal for the '<em><b>Water In Muffler</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__WATER_IN_MUFFLER = eINSTANCE.getSeaRun_WaterInMuffler();

		/**
		 * The meta object literal for the '<em><b>Difference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__DIFFERENCE = eINSTANCE.getSeaRun_Difference();

		/**
		 * The meta object literal for the '<em><b>Duration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEA_RUN__DURATION = eINSTANCE.getSeaRun_Duration();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.UpkeepImpl <em>Upkeep</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.UpkeepImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getUpkeep()
		 * @generated
		 */
		EClass UPKEEP = eINSTANCE.getUpkeep();

		/**
		 * The meta object literal for the '<em><b>Tasks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference UPKEEP__TASKS = eINSTANCE.getUpkeep_Tasks();

		/**
		 * The meta object literal for the '<em><b>Consumables</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference UPKEEP__CONSUMABLES = eINSTANCE.getUpkeep_Consumables();

		/**
		 * The meta object literal for the '<em><b>Annual Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP__ANNUAL_HOURS = eINSTANCE.getUpkeep_AnnualHours();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.UpkeepTaskImpl <em>Upkeep Task</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.UpkeepTaskImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getUpkeepTask()
		 * @generated
		 */
		EClass UPKEEP_TASK = eINSTANCE.getUpkeepTask();

		/**
		 * The meta object literal for the '<em><b>Task</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__TASK = eINSTANCE.getUpkeepTask_Task();

		/**
		 * The meta object literal for the '<em><b>Every Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__EVERY_HOURS = eINSTANCE.getUpkeepTask_EveryHours();

		/**
		 * The meta object literal for the '<em><b>Every Months</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__EVERY_MONTHS = eINSTANCE.getUpkeepTask_EveryMonths();

		/**
		 * The meta object literal for the '<em><b>Last Done On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__LAST_DONE_ON = eINSTANCE.getUpkeepTask_LastDoneOn();

		/**
		 * The meta object literal for the '<em><b>Last Done Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__LAST_DONE_HOURS = eINSTANCE.getUpkeepTask_LastDoneHours();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__NOTE = eINSTANCE.getUpkeepTask_Note();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.ConsumableImpl <em>Consumable</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.ConsumableImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getConsumable()
		 * @generated
		 */
		EClass CONSUMABLE = eINSTANCE.getConsumable();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONSUMABLE__NAME = eINSTANCE.getConsumable_Name();

		/**
		 * The meta object literal for the '<em><b>Part Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONSUMABLE__PART_NUMBER = eINSTANCE.getConsumable_PartNumber();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONSUMABLE__QUANTITY = eINSTANCE.getConsumable_Quantity();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.AcceptanceImpl <em>Acceptance</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.AcceptanceImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getAcceptance()
		 * @generated
		 */
		EClass ACCEPTANCE = eINSTANCE.getAcceptance();

		/**
		 * The meta object literal for the '<em><b>Check</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTANCE__CHECK = eINSTANCE.getAcceptance_Check();

		/**
		 * The meta object literal for the '<em><b>Subject</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTANCE__SUBJECT = eINSTANCE.getAcceptance_Subject();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTANCE__REASON = eINSTANCE.getAcceptance_Reason();

		/**
		 * The meta object literal for the '<em><b>Accepted By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTANCE__ACCEPTED_BY = eINSTANCE.getAcceptance_AcceptedBy();

		/**
		 * The meta object literal for the '<em><b>Accepted On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTANCE__ACCEPTED_ON = eINSTANCE.getAcceptance_AcceptedOn();

		/**
		 * The meta object literal for the '<em><b>Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTANCE__UNTIL = eINSTANCE.getAcceptance_Until();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.SignatureImpl <em>Signature</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.SignatureImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getSignature()
		 * @generated
		 */
		EClass SIGNATURE = eINSTANCE.getSignature();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNATURE__ROLE = eINSTANCE.getSignature_Role();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNATURE__NAME = eINSTANCE.getSignature_Name();

		/**
		 * The meta object literal for the '<em><b>Licence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNATURE__LICENCE = eINSTANCE.getSignature_Licence();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNATURE__PLACE = eINSTANCE.getSignature_Place();

		/**
		 * The meta object literal for the '<em><b>Signed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNATURE__SIGNED_ON = eINSTANCE.getSignature_SignedOn();

		/**
		 * The meta object literal for the '<em><b>Statement</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNATURE__STATEMENT = eINSTANCE.getSignature_Statement();

		/**
		 * The meta object literal for the '<em><b>Verdicts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIGNATURE__VERDICTS = eINSTANCE.getSignature_Verdicts();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.UnreadEntryImpl <em>Unread Entry</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.UnreadEntryImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getUnreadEntry()
		 * @generated
		 */
		EClass UNREAD_ENTRY = eINSTANCE.getUnreadEntry();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNREAD_ENTRY__PLACE = eINSTANCE.getUnreadEntry_Place();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNREAD_ENTRY__TEXT = eINSTANCE.getUnreadEntry_Text();

		/**
		 * The meta object literal for the '{@link garboard.model.impl.StoredVerdictImpl <em>Stored Verdict</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.impl.StoredVerdictImpl
		 * @see garboard.model.impl.GarboardPackageImpl#getStoredVerdict()
		 * @generated
		 */
		EClass STORED_VERDICT = eINSTANCE.getStoredVerdict();

		/**
		 * The meta object literal for the '<em><b>Check</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_VERDICT__CHECK = eINSTANCE.getStoredVerdict_Check();

		/**
		 * The meta object literal for the '<em><b>Subject</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_VERDICT__SUBJECT = eINSTANCE.getStoredVerdict_Subject();

		/**
		 * The meta object literal for the '<em><b>Standing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_VERDICT__STANDING = eINSTANCE.getStoredVerdict_Standing();

		/**
		 * The meta object literal for the '<em><b>Measured</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_VERDICT__MEASURED = eINSTANCE.getStoredVerdict_Measured();

		/**
		 * The meta object literal for the '<em><b>Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_VERDICT__LIMIT = eINSTANCE.getStoredVerdict_Limit();

		/**
		 * The meta object literal for the '<em><b>Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STORED_VERDICT__MARGIN = eINSTANCE.getStoredVerdict_Margin();

		/**
		 * The meta object literal for the '{@link garboard.model.Answer <em>Answer</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.Answer
		 * @see garboard.model.impl.GarboardPackageImpl#getAnswer()
		 * @generated
		 */
		EEnum ANSWER = eINSTANCE.getAnswer();

		/**
		 * The meta object literal for the '{@link garboard.model.PartyRole <em>Party Role</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.PartyRole
		 * @see garboard.model.impl.GarboardPackageImpl#getPartyRole()
		 * @generated
		 */
		EEnum PARTY_ROLE = eINSTANCE.getPartyRole();

		/**
		 * The meta object literal for the '{@link garboard.model.HullKind <em>Hull Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.HullKind
		 * @see garboard.model.impl.GarboardPackageImpl#getHullKind()
		 * @generated
		 */
		EEnum HULL_KIND = eINSTANCE.getHullKind();

		/**
		 * The meta object literal for the '{@link garboard.model.HullMaterial <em>Hull Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.HullMaterial
		 * @see garboard.model.impl.GarboardPackageImpl#getHullMaterial()
		 * @generated
		 */
		EEnum HULL_MATERIAL = eINSTANCE.getHullMaterial();

		/**
		 * The meta object literal for the '{@link garboard.model.VesselService <em>Vessel Service</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.VesselService
		 * @see garboard.model.impl.GarboardPackageImpl#getVesselService()
		 * @generated
		 */
		EEnum VESSEL_SERVICE = eINSTANCE.getVesselService();

		/**
		 * The meta object literal for the '{@link garboard.model.FuelKind <em>Fuel Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.FuelKind
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelKind()
		 * @generated
		 */
		EEnum FUEL_KIND = eINSTANCE.getFuelKind();

		/**
		 * The meta object literal for the '{@link garboard.model.Aspiration <em>Aspiration</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.Aspiration
		 * @see garboard.model.impl.GarboardPackageImpl#getAspiration()
		 * @generated
		 */
		EEnum ASPIRATION = eINSTANCE.getAspiration();

		/**
		 * The meta object literal for the '{@link garboard.model.FuelSystem <em>Fuel System</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.FuelSystem
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelSystem()
		 * @generated
		 */
		EEnum FUEL_SYSTEM = eINSTANCE.getFuelSystem();

		/**
		 * The meta object literal for the '{@link garboard.model.Cooling <em>Cooling</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.Cooling
		 * @see garboard.model.impl.GarboardPackageImpl#getCooling()
		 * @generated
		 */
		EEnum COOLING = eINSTANCE.getCooling();

		/**
		 * The meta object literal for the '{@link garboard.model.PhaseSystem <em>Phase System</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.PhaseSystem
		 * @see garboard.model.impl.GarboardPackageImpl#getPhaseSystem()
		 * @generated
		 */
		EEnum PHASE_SYSTEM = eINSTANCE.getPhaseSystem();

		/**
		 * The meta object literal for the '{@link garboard.model.DutyRating <em>Duty Rating</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.DutyRating
		 * @see garboard.model.impl.GarboardPackageImpl#getDutyRating()
		 * @generated
		 */
		EEnum DUTY_RATING = eINSTANCE.getDutyRating();

		/**
		 * The meta object literal for the '{@link garboard.model.PerformanceClass <em>Performance Class</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.PerformanceClass
		 * @see garboard.model.impl.GarboardPackageImpl#getPerformanceClass()
		 * @generated
		 */
		EEnum PERFORMANCE_CLASS = eINSTANCE.getPerformanceClass();

		/**
		 * The meta object literal for the '{@link garboard.model.BatteryChemistry <em>Battery Chemistry</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.BatteryChemistry
		 * @see garboard.model.impl.GarboardPackageImpl#getBatteryChemistry()
		 * @generated
		 */
		EEnum BATTERY_CHEMISTRY = eINSTANCE.getBatteryChemistry();

		/**
		 * The meta object literal for the '{@link garboard.model.CrankingRatingDefinition <em>Cranking Rating Definition</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.CrankingRatingDefinition
		 * @see garboard.model.impl.GarboardPackageImpl#getCrankingRatingDefinition()
		 * @generated
		 */
		EEnum CRANKING_RATING_DEFINITION = eINSTANCE.getCrankingRatingDefinition();

		/**
		 * The meta object literal for the '{@link garboard.model.TerminalKind <em>Terminal Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.TerminalKind
		 * @see garboard.model.impl.GarboardPackageImpl#getTerminalKind()
		 * @generated
		 */
		EEnum TERMINAL_KIND = eINSTANCE.getTerminalKind();

		/**
		 * The meta object literal for the '{@link garboard.model.CableFunction <em>Cable Function</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.CableFunction
		 * @see garboard.model.impl.GarboardPackageImpl#getCableFunction()
		 * @generated
		 */
		EEnum CABLE_FUNCTION = eINSTANCE.getCableFunction();

		/**
		 * The meta object literal for the '{@link garboard.model.StrandClass <em>Strand Class</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.StrandClass
		 * @see garboard.model.impl.GarboardPackageImpl#getStrandClass()
		 * @generated
		 */
		EEnum STRAND_CLASS = eINSTANCE.getStrandClass();

		/**
		 * The meta object literal for the '{@link garboard.model.InsulationRating <em>Insulation Rating</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.InsulationRating
		 * @see garboard.model.impl.GarboardPackageImpl#getInsulationRating()
		 * @generated
		 */
		EEnum INSULATION_RATING = eINSTANCE.getInsulationRating();

		/**
		 * The meta object literal for the '{@link garboard.model.ProtectionKind <em>Protection Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.ProtectionKind
		 * @see garboard.model.impl.GarboardPackageImpl#getProtectionKind()
		 * @generated
		 */
		EEnum PROTECTION_KIND = eINSTANCE.getProtectionKind();

		/**
		 * The meta object literal for the '{@link garboard.model.TankMaterial <em>Tank Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.TankMaterial
		 * @see garboard.model.impl.GarboardPackageImpl#getTankMaterial()
		 * @generated
		 */
		EEnum TANK_MATERIAL = eINSTANCE.getTankMaterial();

		/**
		 * The meta object literal for the '{@link garboard.model.FuelLineFunction <em>Fuel Line Function</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.FuelLineFunction
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelLineFunction()
		 * @generated
		 */
		EEnum FUEL_LINE_FUNCTION = eINSTANCE.getFuelLineFunction();

		/**
		 * The meta object literal for the '{@link garboard.model.FuelLineKind <em>Fuel Line Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.FuelLineKind
		 * @see garboard.model.impl.GarboardPackageImpl#getFuelLineKind()
		 * @generated
		 */
		EEnum FUEL_LINE_KIND = eINSTANCE.getFuelLineKind();

		/**
		 * The meta object literal for the '{@link garboard.model.BowlKind <em>Bowl Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.BowlKind
		 * @see garboard.model.impl.GarboardPackageImpl#getBowlKind()
		 * @generated
		 */
		EEnum BOWL_KIND = eINSTANCE.getBowlKind();

		/**
		 * The meta object literal for the '{@link garboard.model.AntiSiphonProtection <em>Anti Siphon Protection</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.AntiSiphonProtection
		 * @see garboard.model.impl.GarboardPackageImpl#getAntiSiphonProtection()
		 * @generated
		 */
		EEnum ANTI_SIPHON_PROTECTION = eINSTANCE.getAntiSiphonProtection();

		/**
		 * The meta object literal for the '{@link garboard.model.StrainerPickUp <em>Strainer Pick Up</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.StrainerPickUp
		 * @see garboard.model.impl.GarboardPackageImpl#getStrainerPickUp()
		 * @generated
		 */
		EEnum STRAINER_PICK_UP = eINSTANCE.getStrainerPickUp();

		/**
		 * The meta object literal for the '{@link garboard.model.ValveKind <em>Valve Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.ValveKind
		 * @see garboard.model.impl.GarboardPackageImpl#getValveKind()
		 * @generated
		 */
		EEnum VALVE_KIND = eINSTANCE.getValveKind();

		/**
		 * The meta object literal for the '{@link garboard.model.FittingMaterial <em>Fitting Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.FittingMaterial
		 * @see garboard.model.impl.GarboardPackageImpl#getFittingMaterial()
		 * @generated
		 */
		EEnum FITTING_MATERIAL = eINSTANCE.getFittingMaterial();

		/**
		 * The meta object literal for the '{@link garboard.model.WaterHoseKind <em>Water Hose Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.WaterHoseKind
		 * @see garboard.model.impl.GarboardPackageImpl#getWaterHoseKind()
		 * @generated
		 */
		EEnum WATER_HOSE_KIND = eINSTANCE.getWaterHoseKind();

		/**
		 * The meta object literal for the '{@link garboard.model.WaterSection <em>Water Section</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.WaterSection
		 * @see garboard.model.impl.GarboardPackageImpl#getWaterSection()
		 * @generated
		 */
		EEnum WATER_SECTION = eINSTANCE.getWaterSection();

		/**
		 * The meta object literal for the '{@link garboard.model.PipeFittingKind <em>Pipe Fitting Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.PipeFittingKind
		 * @see garboard.model.impl.GarboardPackageImpl#getPipeFittingKind()
		 * @generated
		 */
		EEnum PIPE_FITTING_KIND = eINSTANCE.getPipeFittingKind();

		/**
		 * The meta object literal for the '{@link garboard.model.SiphonBreakKind <em>Siphon Break Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.SiphonBreakKind
		 * @see garboard.model.impl.GarboardPackageImpl#getSiphonBreakKind()
		 * @generated
		 */
		EEnum SIPHON_BREAK_KIND = eINSTANCE.getSiphonBreakKind();

		/**
		 * The meta object literal for the '{@link garboard.model.SiphonBreakPlace <em>Siphon Break Place</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.SiphonBreakPlace
		 * @see garboard.model.impl.GarboardPackageImpl#getSiphonBreakPlace()
		 * @generated
		 */
		EEnum SIPHON_BREAK_PLACE = eINSTANCE.getSiphonBreakPlace();

		/**
		 * The meta object literal for the '{@link garboard.model.VentHoseEnd <em>Vent Hose End</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.VentHoseEnd
		 * @see garboard.model.impl.GarboardPackageImpl#getVentHoseEnd()
		 * @generated
		 */
		EEnum VENT_HOSE_END = eINSTANCE.getVentHoseEnd();

		/**
		 * The meta object literal for the '{@link garboard.model.ExhaustSection <em>Exhaust Section</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.ExhaustSection
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustSection()
		 * @generated
		 */
		EEnum EXHAUST_SECTION = eINSTANCE.getExhaustSection();

		/**
		 * The meta object literal for the '{@link garboard.model.ExhaustHoseStandard <em>Exhaust Hose Standard</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.ExhaustHoseStandard
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustHoseStandard()
		 * @generated
		 */
		EEnum EXHAUST_HOSE_STANDARD = eINSTANCE.getExhaustHoseStandard();

		/**
		 * The meta object literal for the '{@link garboard.model.ExhaustBendKind <em>Exhaust Bend Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.ExhaustBendKind
		 * @see garboard.model.impl.GarboardPackageImpl#getExhaustBendKind()
		 * @generated
		 */
		EEnum EXHAUST_BEND_KIND = eINSTANCE.getExhaustBendKind();

		/**
		 * The meta object literal for the '{@link garboard.model.MufflerKind <em>Muffler Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.MufflerKind
		 * @see garboard.model.impl.GarboardPackageImpl#getMufflerKind()
		 * @generated
		 */
		EEnum MUFFLER_KIND = eINSTANCE.getMufflerKind();

		/**
		 * The meta object literal for the '{@link garboard.model.OutletPlace <em>Outlet Place</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.OutletPlace
		 * @see garboard.model.impl.GarboardPackageImpl#getOutletPlace()
		 * @generated
		 */
		EEnum OUTLET_PLACE = eINSTANCE.getOutletPlace();

		/**
		 * The meta object literal for the '{@link garboard.model.AntiSurge <em>Anti Surge</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.AntiSurge
		 * @see garboard.model.impl.GarboardPackageImpl#getAntiSurge()
		 * @generated
		 */
		EEnum ANTI_SURGE = eINSTANCE.getAntiSurge();

		/**
		 * The meta object literal for the '{@link garboard.model.DuctFunction <em>Duct Function</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.DuctFunction
		 * @see garboard.model.impl.GarboardPackageImpl#getDuctFunction()
		 * @generated
		 */
		EEnum DUCT_FUNCTION = eINSTANCE.getDuctFunction();

		/**
		 * The meta object literal for the '{@link garboard.model.NeutralBond <em>Neutral Bond</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.NeutralBond
		 * @see garboard.model.impl.GarboardPackageImpl#getNeutralBond()
		 * @generated
		 */
		EEnum NEUTRAL_BOND = eINSTANCE.getNeutralBond();

		/**
		 * The meta object literal for the '{@link garboard.model.TransferKind <em>Transfer Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.TransferKind
		 * @see garboard.model.impl.GarboardPackageImpl#getTransferKind()
		 * @generated
		 */
		EEnum TRANSFER_KIND = eINSTANCE.getTransferKind();

		/**
		 * The meta object literal for the '{@link garboard.model.PolesSwitched <em>Poles Switched</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.PolesSwitched
		 * @see garboard.model.impl.GarboardPackageImpl#getPolesSwitched()
		 * @generated
		 */
		EEnum POLES_SWITCHED = eINSTANCE.getPolesSwitched();

		/**
		 * The meta object literal for the '{@link garboard.model.TripCurve <em>Trip Curve</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.TripCurve
		 * @see garboard.model.impl.GarboardPackageImpl#getTripCurve()
		 * @generated
		 */
		EEnum TRIP_CURVE = eINSTANCE.getTripCurve();

		/**
		 * The meta object literal for the '{@link garboard.model.LoadKind <em>Load Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.LoadKind
		 * @see garboard.model.impl.GarboardPackageImpl#getLoadKind()
		 * @generated
		 */
		EEnum LOAD_KIND = eINSTANCE.getLoadKind();

		/**
		 * The meta object literal for the '{@link garboard.model.MotorStarting <em>Motor Starting</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.MotorStarting
		 * @see garboard.model.impl.GarboardPackageImpl#getMotorStarting()
		 * @generated
		 */
		EEnum MOTOR_STARTING = eINSTANCE.getMotorStarting();

		/**
		 * The meta object literal for the '{@link garboard.model.AlarmKind <em>Alarm Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.AlarmKind
		 * @see garboard.model.impl.GarboardPackageImpl#getAlarmKind()
		 * @generated
		 */
		EEnum ALARM_KIND = eINSTANCE.getAlarmKind();

		/**
		 * The meta object literal for the '{@link garboard.model.TestResult <em>Test Result</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.TestResult
		 * @see garboard.model.impl.GarboardPackageImpl#getTestResult()
		 * @generated
		 */
		EEnum TEST_RESULT = eINSTANCE.getTestResult();

		/**
		 * The meta object literal for the '{@link garboard.model.SeacockState <em>Seacock State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.SeacockState
		 * @see garboard.model.impl.GarboardPackageImpl#getSeacockState()
		 * @generated
		 */
		EEnum SEACOCK_STATE = eINSTANCE.getSeacockState();

		/**
		 * The meta object literal for the '{@link garboard.model.TrialPlace <em>Trial Place</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.TrialPlace
		 * @see garboard.model.impl.GarboardPackageImpl#getTrialPlace()
		 * @generated
		 */
		EEnum TRIAL_PLACE = eINSTANCE.getTrialPlace();

		/**
		 * The meta object literal for the '{@link garboard.model.SignatureRole <em>Signature Role</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.SignatureRole
		 * @see garboard.model.impl.GarboardPackageImpl#getSignatureRole()
		 * @generated
		 */
		EEnum SIGNATURE_ROLE = eINSTANCE.getSignatureRole();

		/**
		 * The meta object literal for the '{@link garboard.model.SmokeColour <em>Smoke Colour</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.model.SmokeColour
		 * @see garboard.model.impl.GarboardPackageImpl#getSmokeColour()
		 * @generated
		 */
		EEnum SMOKE_COLOUR = eINSTANCE.getSmokeColour();

		/**
		 * The meta object literal for the '<em>Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Length
		 * @see garboard.model.impl.GarboardPackageImpl#getLength()
		 * @generated
		 */
		EDataType LENGTH = eINSTANCE.getLength();

		/**
		 * The meta object literal for the '<em>Area</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Area
		 * @see garboard.model.impl.GarboardPackageImpl#getArea()
		 * @generated
		 */
		EDataType AREA = eINSTANCE.getArea();

		/**
		 * The meta object literal for the '<em>Volume</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Volume
		 * @see garboard.model.impl.GarboardPackageImpl#getVolume()
		 * @generated
		 */
		EDataType VOLUME = eINSTANCE.getVolume();

		/**
		 * The meta object literal for the '<em>Mass</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Mass
		 * @see garboard.model.impl.GarboardPackageImpl#getMass()
		 * @generated
		 */
		EDataType MASS = eINSTANCE.getMass();

		/**
		 * The meta object literal for the '<em>Angle</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Angle
		 * @see garboard.model.impl.GarboardPackageImpl#getAngle()
		 * @generated
		 */
		EDataType ANGLE = eINSTANCE.getAngle();

		/**
		 * The meta object literal for the '<em>Slope</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Slope
		 * @see garboard.model.impl.GarboardPackageImpl#getSlope()
		 * @generated
		 */
		EDataType SLOPE = eINSTANCE.getSlope();

		/**
		 * The meta object literal for the '<em>Speed</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Speed
		 * @see garboard.model.impl.GarboardPackageImpl#getSpeed()
		 * @generated
		 */
		EDataType SPEED = eINSTANCE.getSpeed();

		/**
		 * The meta object literal for the '<em>Time Span</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.TimeSpan
		 * @see garboard.model.impl.GarboardPackageImpl#getTimeSpan()
		 * @generated
		 */
		EDataType TIME_SPAN = eINSTANCE.getTimeSpan();

		/**
		 * The meta object literal for the '<em>Frequency</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Frequency
		 * @see garboard.model.impl.GarboardPackageImpl#getFrequency()
		 * @generated
		 */
		EDataType FREQUENCY = eINSTANCE.getFrequency();

		/**
		 * The meta object literal for the '<em>Rotational Speed</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.RotationalSpeed
		 * @see garboard.model.impl.GarboardPackageImpl#getRotationalSpeed()
		 * @generated
		 */
		EDataType ROTATIONAL_SPEED = eINSTANCE.getRotationalSpeed();

		/**
		 * The meta object literal for the '<em>Absolute Pressure</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.AbsolutePressure
		 * @see garboard.model.impl.GarboardPackageImpl#getAbsolutePressure()
		 * @generated
		 */
		EDataType ABSOLUTE_PRESSURE = eINSTANCE.getAbsolutePressure();

		/**
		 * The meta object literal for the '<em>Gauge Pressure</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.GaugePressure
		 * @see garboard.model.impl.GarboardPackageImpl#getGaugePressure()
		 * @generated
		 */
		EDataType GAUGE_PRESSURE = eINSTANCE.getGaugePressure();

		/**
		 * The meta object literal for the '<em>Pressure Difference</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.PressureDifference
		 * @see garboard.model.impl.GarboardPackageImpl#getPressureDifference()
		 * @generated
		 */
		EDataType PRESSURE_DIFFERENCE = eINSTANCE.getPressureDifference();

		/**
		 * The meta object literal for the '<em>Temperature</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Temperature
		 * @see garboard.model.impl.GarboardPackageImpl#getTemperature()
		 * @generated
		 */
		EDataType TEMPERATURE = eINSTANCE.getTemperature();

		/**
		 * The meta object literal for the '<em>Temperature Difference</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.TemperatureDifference
		 * @see garboard.model.impl.GarboardPackageImpl#getTemperatureDifference()
		 * @generated
		 */
		EDataType TEMPERATURE_DIFFERENCE = eINSTANCE.getTemperatureDifference();

		/**
		 * The meta object literal for the '<em>Volume Flow</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.VolumeFlow
		 * @see garboard.model.impl.GarboardPackageImpl#getVolumeFlow()
		 * @generated
		 */
		EDataType VOLUME_FLOW = eINSTANCE.getVolumeFlow();

		/**
		 * The meta object literal for the '<em>Mass Flow</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.MassFlow
		 * @see garboard.model.impl.GarboardPackageImpl#getMassFlow()
		 * @generated
		 */
		EDataType MASS_FLOW = eINSTANCE.getMassFlow();

		/**
		 * The meta object literal for the '<em>Power</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Power
		 * @see garboard.model.impl.GarboardPackageImpl#getPower()
		 * @generated
		 */
		EDataType POWER = eINSTANCE.getPower();

		/**
		 * The meta object literal for the '<em>Apparent Power</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.ApparentPower
		 * @see garboard.model.impl.GarboardPackageImpl#getApparentPower()
		 * @generated
		 */
		EDataType APPARENT_POWER = eINSTANCE.getApparentPower();

		/**
		 * The meta object literal for the '<em>Voltage</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Voltage
		 * @see garboard.model.impl.GarboardPackageImpl#getVoltage()
		 * @generated
		 */
		EDataType VOLTAGE = eINSTANCE.getVoltage();

		/**
		 * The meta object literal for the '<em>Current</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Current
		 * @see garboard.model.impl.GarboardPackageImpl#getCurrent()
		 * @generated
		 */
		EDataType CURRENT = eINSTANCE.getCurrent();

		/**
		 * The meta object literal for the '<em>Resistance</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Resistance
		 * @see garboard.model.impl.GarboardPackageImpl#getResistance()
		 * @generated
		 */
		EDataType RESISTANCE = eINSTANCE.getResistance();

		/**
		 * The meta object literal for the '<em>Charge</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Charge
		 * @see garboard.model.impl.GarboardPackageImpl#getCharge()
		 * @generated
		 */
		EDataType CHARGE = eINSTANCE.getCharge();

		/**
		 * The meta object literal for the '<em>Specific Consumption</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.SpecificConsumption
		 * @see garboard.model.impl.GarboardPackageImpl#getSpecificConsumption()
		 * @generated
		 */
		EDataType SPECIFIC_CONSUMPTION = eINSTANCE.getSpecificConsumption();

		/**
		 * The meta object literal for the '<em>Ratio</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see garboard.quantity.Ratio
		 * @see garboard.model.impl.GarboardPackageImpl#getRatio()
		 * @generated
		 */
		EDataType RATIO = eINSTANCE.getRatio();

		/**
		 * The meta object literal for the '<em>Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see garboard.model.impl.GarboardPackageImpl#getDate()
		 * @generated
		 */
		EDataType DATE = eINSTANCE.getDate();

		/**
		 * The meta object literal for the '<em>Date Time</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.OffsetDateTime
		 * @see garboard.model.impl.GarboardPackageImpl#getDateTime()
		 * @generated
		 */
		EDataType DATE_TIME = eINSTANCE.getDateTime();

		/**
		 * The meta object literal for the '<em>Text</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.lang.String
		 * @see garboard.model.impl.GarboardPackageImpl#getText()
		 * @generated
		 */
		EDataType TEXT = eINSTANCE.getText();

	}

} //GarboardPackage
