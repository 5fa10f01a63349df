/**
 */
package org.flexwright.model;

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
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see org.flexwright.model.ModelFactory
 * @model kind="package"
 * @generated
 */
public interface ModelPackage extends EPackage {
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
	String eNS_URI = "urn:flexwright:model:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "fw";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ModelPackage eINSTANCE = org.flexwright.model.impl.ModelPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.IdentifiedImpl <em>Identified</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.IdentifiedImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getIdentified()
	 * @generated
	 */
	int IDENTIFIED = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED__ID = 0;

	/**
	 * The number of structural features of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_FEATURE_COUNT = 1;

	/**
	 * The number of operations of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.EntryImpl <em>Entry</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.EntryImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getEntry()
	 * @generated
	 */
	int ENTRY = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY__PROVENANCE = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY__NOTE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ENTRY_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.ProvenanceImpl <em>Provenance</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.ProvenanceImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getProvenance()
	 * @generated
	 */
	int PROVENANCE = 2;

	/**
	 * The feature id for the '<em><b>Feature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__FEATURE = 0;

	/**
	 * The feature id for the '<em><b>Origin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__ORIGIN = 1;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__SOURCE = 2;

	/**
	 * The feature id for the '<em><b>Uncertainty</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__UNCERTAINTY = 3;

	/**
	 * The feature id for the '<em><b>Typed As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__TYPED_AS = 4;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__BY = 5;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE__AT = 6;

	/**
	 * The number of structural features of the '<em>Provenance</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE_FEATURE_COUNT = 7;

	/**
	 * The number of operations of the '<em>Provenance</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVENANCE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.ProjectImpl <em>Project</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.ProjectImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getProject()
	 * @generated
	 */
	int PROJECT = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__TITLE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__JOB = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Invented</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__INVENTED = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Created At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CREATED_AT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Written By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__WRITTEN_BY = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__FORMAT_VERSION = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Journal Seq</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__JOURNAL_SEQ = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Needs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__NEEDS = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Reference Parts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__REFERENCE_PARTS = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Target Sheets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__TARGET_SHEETS = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Grades</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__GRADES = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Instruments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__INSTRUMENTS = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Control Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CONTROL_PIECES = ENTRY_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Sessions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__SESSIONS = ENTRY_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Trials</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__TRIALS = ENTRY_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Recipes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__RECIPES = ENTRY_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Attachments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__ATTACHMENTS = ENTRY_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Acknowledgements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__ACKNOWLEDGEMENTS = ENTRY_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Overrides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__OVERRIDES = ENTRY_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Plugins</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__PLUGINS = ENTRY_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Moulds</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__MOULDS = ENTRY_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Premixes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__PREMIXES = ENTRY_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Batches</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__BATCHES = ENTRY_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Searches</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__SEARCHES = ENTRY_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Hourly Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__HOURLY_RATE = ENTRY_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Cup Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CUP_PRICE = ENTRY_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Gauge Studies</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__GAUGE_STUDIES = ENTRY_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Spot Maps</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__SPOT_MAPS = ENTRY_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Law Fits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__LAW_FITS = ENTRY_FEATURE_COUNT + 28;

	/**
	 * The feature id for the '<em><b>Rankings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__RANKINGS = ENTRY_FEATURE_COUNT + 29;

	/**
	 * The feature id for the '<em><b>Ageing Plans</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__AGEING_PLANS = ENTRY_FEATURE_COUNT + 30;

	/**
	 * The number of structural features of the '<em>Project</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 31;

	/**
	 * The number of operations of the '<em>Project</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.PluginUseImpl <em>Plugin Use</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.PluginUseImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPluginUse()
	 * @generated
	 */
	int PLUGIN_USE = 4;

	/**
	 * The feature id for the '<em><b>Ns URI</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLUGIN_USE__NS_URI = 0;

	/**
	 * The feature id for the '<em><b>Plugin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLUGIN_USE__PLUGIN = 1;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLUGIN_USE__VERSION = 2;

	/**
	 * The number of structural features of the '<em>Plugin Use</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLUGIN_USE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Plugin Use</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLUGIN_USE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.NeedImpl <em>Need</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.NeedImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getNeed()
	 * @generated
	 */
	int NEED = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__TEXT = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Importance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__IMPORTANCE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Need</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Need</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.PropertyKeyImpl <em>Property Key</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.PropertyKeyImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPropertyKey()
	 * @generated
	 */
	int PROPERTY_KEY = 6;

	/**
	 * The feature id for the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY__PROPERTY = 0;

	/**
	 * The feature id for the '<em><b>Piece Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY__PIECE_KIND = 1;

	/**
	 * The feature id for the '<em><b>Spot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY__SPOT = 2;

	/**
	 * The feature id for the '<em><b>Support</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY__SUPPORT = 3;

	/**
	 * The feature id for the '<em><b>Dwell</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY__DWELL = 4;

	/**
	 * The number of structural features of the '<em>Property Key</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Property Key</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPERTY_KEY_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.TargetSheetImpl <em>Target Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.TargetSheetImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getTargetSheet()
	 * @generated
	 */
	int TARGET_SHEET = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__VERSION = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Frozen At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__FROZEN_AT = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Frozen By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__FROZEN_BY = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__REASON = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Targets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET__TARGETS = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Target Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Target Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_SHEET_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.TargetImpl <em>Target</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.TargetImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getTarget()
	 * @generated
	 */
	int TARGET = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__KEY = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__RULE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__LOW = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__HIGH = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__NOMINAL = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__TOLERANCE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Weight</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__WEIGHT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Reject Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__REJECT_BELOW = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Reject Above</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__REJECT_ABOVE = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Allowed Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__ALLOWED_SHARE = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Target</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Target</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.MaterialGradeImpl <em>Material Grade</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.MaterialGradeImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getMaterialGrade()
	 * @generated
	 */
	int MATERIAL_GRADE = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__NAME = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__FAMILY = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__ROLE = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Hazards</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__HAZARDS = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__VALUES = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__LOTS = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Pack Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE__PACK_SIZE = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Material Grade</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Material Grade</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_GRADE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.MaterialValueImpl <em>Material Value</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.MaterialValueImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getMaterialValue()
	 * @generated
	 */
	int MATERIAL_VALUE = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__PROPERTY = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__UNIT = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sheet Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__SHEET_VALUE = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sheet Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__SHEET_SOURCE = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Own Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__OWN_VALUE = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Own Uncertainty</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__OWN_UNCERTAINTY = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Own Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE__OWN_SOURCE = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Material Value</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Material Value</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_VALUE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.LotImpl <em>Lot</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.LotImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getLot()
	 * @generated
	 */
	int LOT = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Opened</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__OPENED = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Expires</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__EXPIRES = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__PRICE = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__AMOUNT = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sheet Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__SHEET_DATE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Sheet Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__SHEET_REVISION = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__VALUES = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Lot</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Lot</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.InstrumentImpl <em>Instrument</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.InstrumentImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getInstrument()
	 * @generated
	 */
	int INSTRUMENT = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__NAME = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__KIND = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__UNIT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Resolution</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__RESOLUTION = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Accuracy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__ACCURACY = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Scale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__SCALE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Spread</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__SPREAD = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Spread From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__SPREAD_FROM = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Checked On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__CHECKED_ON = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Check Every Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__CHECK_EVERY_DAYS = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Check Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__CHECK_NOTE = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Study</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT__STUDY = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Instrument</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Instrument</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSTRUMENT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.SessionImpl <em>Session</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.SessionImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getSession()
	 * @generated
	 */
	int SESSION = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__AT = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Room C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__ROOM_C = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Room Rh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__ROOM_RH = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__WHO = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Instruments</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__INSTRUMENTS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Control Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__CONTROL_PIECE = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Conditioning Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__CONDITIONING_HOURS = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Room</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION__ROOM = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Session</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Session</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SESSION_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.SpecimenImpl <em>Specimen</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.SpecimenImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getSpecimen()
	 * @generated
	 */
	int SPECIMEN = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Piece Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__PIECE_KIND = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__THICKNESS = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__MADE_AT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Failed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__FAILED = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Fail Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__FAIL_REASON = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Measurements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__MEASUREMENTS = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Recordings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__RECORDINGS = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Specimen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Specimen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.ControlPieceImpl <em>Control Piece</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.ControlPieceImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getControlPiece()
	 * @generated
	 */
	int CONTROL_PIECE = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__ID = SPECIMEN__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__PROVENANCE = SPECIMEN__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__NOTE = SPECIMEN__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__CODE = SPECIMEN__CODE;

	/**
	 * The feature id for the '<em><b>Piece Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__PIECE_KIND = SPECIMEN__PIECE_KIND;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__THICKNESS = SPECIMEN__THICKNESS;

	/**
	 * The feature id for the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__MADE_AT = SPECIMEN__MADE_AT;

	/**
	 * The feature id for the '<em><b>Failed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__FAILED = SPECIMEN__FAILED;

	/**
	 * The feature id for the '<em><b>Fail Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__FAIL_REASON = SPECIMEN__FAIL_REASON;

	/**
	 * The feature id for the '<em><b>Measurements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__MEASUREMENTS = SPECIMEN__MEASUREMENTS;

	/**
	 * The feature id for the '<em><b>Recordings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__RECORDINGS = SPECIMEN__RECORDINGS;

	/**
	 * The feature id for the '<em><b>Usual</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__USUAL = SPECIMEN_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Usual Spread</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__USUAL_SPREAD = SPECIMEN_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Usual From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE__USUAL_FROM = SPECIMEN_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Control Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE_FEATURE_COUNT = SPECIMEN_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Control Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTROL_PIECE_OPERATION_COUNT = SPECIMEN_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.ReferencePartImpl <em>Reference Part</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.ReferencePartImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getReferencePart()
	 * @generated
	 */
	int REFERENCE_PART = 16;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__ID = SPECIMEN__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__PROVENANCE = SPECIMEN__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__NOTE = SPECIMEN__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__CODE = SPECIMEN__CODE;

	/**
	 * The feature id for the '<em><b>Piece Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__PIECE_KIND = SPECIMEN__PIECE_KIND;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__THICKNESS = SPECIMEN__THICKNESS;

	/**
	 * The feature id for the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__MADE_AT = SPECIMEN__MADE_AT;

	/**
	 * The feature id for the '<em><b>Failed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__FAILED = SPECIMEN__FAILED;

	/**
	 * The feature id for the '<em><b>Fail Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__FAIL_REASON = SPECIMEN__FAIL_REASON;

	/**
	 * The feature id for the '<em><b>Measurements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__MEASUREMENTS = SPECIMEN__MEASUREMENTS;

	/**
	 * The feature id for the '<em><b>Recordings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__RECORDINGS = SPECIMEN__RECORDINGS;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__NAME = SPECIMEN_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__CONDITION = SPECIMEN_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Age Years</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__AGE_YEARS = SPECIMEN_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Photos</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART__PHOTOS = SPECIMEN_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Reference Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART_FEATURE_COUNT = SPECIMEN_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Reference Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REFERENCE_PART_OPERATION_COUNT = SPECIMEN_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.PartImpl <em>Part</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.PartImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPart()
	 * @generated
	 */
	int PART = 17;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__ID = SPECIMEN__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__PROVENANCE = SPECIMEN__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__NOTE = SPECIMEN__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__CODE = SPECIMEN__CODE;

	/**
	 * The feature id for the '<em><b>Piece Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__PIECE_KIND = SPECIMEN__PIECE_KIND;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__THICKNESS = SPECIMEN__THICKNESS;

	/**
	 * The feature id for the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__MADE_AT = SPECIMEN__MADE_AT;

	/**
	 * The feature id for the '<em><b>Failed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__FAILED = SPECIMEN__FAILED;

	/**
	 * The feature id for the '<em><b>Fail Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__FAIL_REASON = SPECIMEN__FAIL_REASON;

	/**
	 * The feature id for the '<em><b>Measurements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__MEASUREMENTS = SPECIMEN__MEASUREMENTS;

	/**
	 * The feature id for the '<em><b>Recordings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__RECORDINGS = SPECIMEN__RECORDINGS;

	/**
	 * The feature id for the '<em><b>Photos</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART__PHOTOS = SPECIMEN_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART_FEATURE_COUNT = SPECIMEN_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PART_OPERATION_COUNT = SPECIMEN_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.MeasurementImpl <em>Measurement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.MeasurementImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getMeasurement()
	 * @generated
	 */
	int MEASUREMENT = 18;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__KIND = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__KEY = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__AT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Delay Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__DELAY_HOURS = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Piece C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__PIECE_C = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Knowledge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__KNOWLEDGE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__SESSION = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__INSTRUMENT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Readings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__READINGS = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Details</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__DETAILS = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Recording</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__RECORDING = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Measurement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The number of operations of the '<em>Measurement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.ReadingImpl <em>Reading</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.ReadingImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getReading()
	 * @generated
	 */
	int READING = 19;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VALUE = 0;

	/**
	 * The feature id for the '<em><b>Censoring</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CENSORING = 1;

	/**
	 * The feature id for the '<em><b>Yes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__YES = 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__AT = 3;

	/**
	 * The feature id for the '<em><b>Typed As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__TYPED_AS = 4;

	/**
	 * The feature id for the '<em><b>Left Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__LEFT_OUT = 5;

	/**
	 * The number of structural features of the '<em>Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING_FEATURE_COUNT = 6;

	/**
	 * The number of operations of the '<em>Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.TrialImpl <em>Trial</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.TrialImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getTrial()
	 * @generated
	 */
	int TRIAL = 20;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__TITLE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Idea</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__IDEA = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Route</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ROUTE = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Based On</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__BASED_ON = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__STATE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>State Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__STATE_REASON = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Created At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CREATED_AT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__MADE_AT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Conclusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CONCLUSION = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__COST = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__HOURS = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Steps</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__STEPS = ENTRY_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PARTS = ENTRY_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Calculations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CALCULATIONS = ENTRY_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Attachments</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ATTACHMENTS = ENTRY_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Contact At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CONTACT_AT = ENTRY_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Cup Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CUP_LABEL = ENTRY_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Mould</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__MOULD = ENTRY_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__NOTES = ENTRY_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Decisions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__DECISIONS = ENTRY_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Parts Wanted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PARTS_WANTED = ENTRY_FEATURE_COUNT + 21;

	/**
	 * The number of structural features of the '<em>Trial</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 22;

	/**
	 * The number of operations of the '<em>Trial</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.StepImpl <em>Step</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.StepImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getStep()
	 * @generated
	 */
	int STEP = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__KIND = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__TITLE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__STATE = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Unconfirmed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__UNCONFIRMED = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Confirmed By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__CONFIRMED_BY = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Confirmed At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__CONFIRMED_AT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Planned Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__PLANNED_START = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Planned Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__PLANNED_DURATION = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Started At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__STARTED_AT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Ended At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__ENDED_AT = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__SESSION = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Uses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__USES = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Details</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__DETAILS = ENTRY_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Attachments</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP__ATTACHMENTS = ENTRY_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 14;

	/**
	 * The number of operations of the '<em>Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STEP_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.MaterialUseImpl <em>Material Use</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.MaterialUseImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getMaterialUse()
	 * @generated
	 */
	int MATERIAL_USE = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__ROLE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Grade</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__GRADE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__LOT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Planned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__PLANNED = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Weighings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__WEIGHINGS = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__PARTS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Parts By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__PARTS_BY = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Parts Of</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__PARTS_OF = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Moisture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__MOISTURE = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Dried</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__DRIED = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Premix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE__PREMIX = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Material Use</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The number of operations of the '<em>Material Use</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_USE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.WeighingImpl <em>Weighing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.WeighingImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getWeighing()
	 * @generated
	 */
	int WEIGHING = 23;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Gross</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__GROSS = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Tare</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__TARE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Net</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__NET = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__AT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Correction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__CORRECTION = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING__INSTRUMENT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Weighing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Weighing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGHING_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.AttachmentImpl <em>Attachment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.AttachmentImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getAttachment()
	 * @generated
	 */
	int ATTACHMENT = 24;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__KIND = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>File Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__FILE_NAME = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__PATH = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__SHA256 = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__CAPTION = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Added At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT__ADDED_AT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Attachment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Attachment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ATTACHMENT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RecipeImpl <em>Recipe</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RecipeImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRecipe()
	 * @generated
	 */
	int RECIPE = 25;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__VERSION = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Frozen At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__FROZEN_AT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Frozen By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__FROZEN_BY = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Limits</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__LIMITS = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__FROM = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Plan</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__PLAN = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Materials</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__MATERIALS = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>As Made</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__AS_MADE = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Targets</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__TARGETS = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__CHANGES = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Sessions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__SESSIONS = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Instruments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__INSTRUMENTS = ENTRY_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Premixes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__PREMIXES = ENTRY_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Attachments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__ATTACHMENTS = ENTRY_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Mould</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__MOULD = ENTRY_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__TITLE = ENTRY_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__JOB = ENTRY_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Invented</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__INVENTED = ENTRY_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Needs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__NEEDS = ENTRY_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>References</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__REFERENCES = ENTRY_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Overrides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__OVERRIDES = ENTRY_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Acknowledgements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE__ACKNOWLEDGEMENTS = ENTRY_FEATURE_COUNT + 22;

	/**
	 * The number of structural features of the '<em>Recipe</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 23;

	/**
	 * The number of operations of the '<em>Recipe</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECIPE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.AcknowledgementImpl <em>Acknowledgement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.AcknowledgementImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getAcknowledgement()
	 * @generated
	 */
	int ACKNOWLEDGEMENT = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Prompt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__PROMPT = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__SESSION = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__LOT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Step</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__STEP = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__WHO = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__AT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Sheet Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__SHEET_DATE = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Sheet Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT__SHEET_REVISION = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Acknowledgement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Acknowledgement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACKNOWLEDGEMENT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.StopOverrideImpl <em>Stop Override</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.StopOverrideImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getStopOverride()
	 * @generated
	 */
	int STOP_OVERRIDE = 27;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__RULE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__SUBJECT = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Input Hash</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__INPUT_HASH = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__REASON = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__WHO = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE__AT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Stop Override</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Stop Override</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_OVERRIDE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.CalculationRunImpl <em>Calculation Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.CalculationRunImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getCalculationRun()
	 * @generated
	 */
	int CALCULATION_RUN = 28;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Calculation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__CALCULATION = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__VERSION = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Program Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__PROGRAM_VERSION = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__AT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Inputs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__INPUTS = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Results</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__RESULTS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Refusal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN__REFUSAL = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Calculation Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Calculation Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALCULATION_RUN_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RunInputImpl <em>Run Input</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RunInputImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRunInput()
	 * @generated
	 */
	int RUN_INPUT = 29;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT__NAME = 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT__VALUE = 1;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT__TEXT = 2;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT__UNIT = 3;

	/**
	 * The feature id for the '<em><b>Origin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT__ORIGIN = 4;

	/**
	 * The feature id for the '<em><b>Bound To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT__BOUND_TO = 5;

	/**
	 * The number of structural features of the '<em>Run Input</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT_FEATURE_COUNT = 6;

	/**
	 * The number of operations of the '<em>Run Input</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_INPUT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RunResultImpl <em>Run Result</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RunResultImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRunResult()
	 * @generated
	 */
	int RUN_RESULT = 30;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__NAME = 0;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__LOW = 1;

	/**
	 * The feature id for the '<em><b>Likely</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__LIKELY = 2;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__HIGH = 3;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__TEXT = 4;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__UNIT = 5;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT__SOURCE = 6;

	/**
	 * The number of structural features of the '<em>Run Result</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT_FEATURE_COUNT = 7;

	/**
	 * The number of operations of the '<em>Run Result</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_RESULT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.BenchNoteImpl <em>Bench Note</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.BenchNoteImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getBenchNote()
	 * @generated
	 */
	int BENCH_NOTE = 31;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__KIND = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__AT = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Step</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__STEP = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Attachment</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__ATTACHMENT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Sorted At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__SORTED_AT = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sorted As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE__SORTED_AS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Bench Note</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Bench Note</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_NOTE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.DecisionImpl <em>Decision</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.DecisionImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getDecision()
	 * @generated
	 */
	int DECISION = 32;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Word</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__WORD = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__AT = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__WHO = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__REASON = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Open</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__OPEN = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Step</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION__STEP = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Decision</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Decision</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DECISION_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.MouldImpl <em>Mould</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.MouldImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getMould()
	 * @generated
	 */
	int MOULD = 33;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__NAME = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__MATERIAL = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Made On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__MADE_ON = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Cavities</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__CAVITIES = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Casts Before</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__CASTS_BEFORE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Casts Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__CASTS_LIMIT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Turn Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__TURN_MINUTES = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__PRICE = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Casts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD__CASTS = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Mould</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Mould</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.MouldCastImpl <em>Mould Cast</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.MouldCastImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getMouldCast()
	 * @generated
	 */
	int MOULD_CAST = 34;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__AT = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Trial</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__TRIAL = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Release</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__RELEASE = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Released Well</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__RELEASED_WELL = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST__PARTS = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Mould Cast</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Mould Cast</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOULD_CAST_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.PremixImpl <em>Premix</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.PremixImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPremix()
	 * @generated
	 */
	int PREMIX = 35;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__TITLE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__MADE_AT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rested Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__RESTED_HOURS = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Dried C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__DRIED_C = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Dried Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__DRIED_HOURS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Ingredients</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX__INGREDIENTS = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Premix</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Premix</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREMIX_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.BatchImpl <em>Batch</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.BatchImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getBatch()
	 * @generated
	 */
	int BATCH = 36;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__TITLE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Recipe</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__RECIPE = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Wanted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__WANTED = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Spares</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__SPARES = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Created At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__CREATED_AT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Needed By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__NEEDED_BY = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Closed At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__CLOSED_AT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Reject Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__REJECT_LIMIT = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Pots</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__POTS = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Start At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH__START_AT = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Batch</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The number of operations of the '<em>Batch</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BATCH_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.SavedSearchImpl <em>Saved Search</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.SavedSearchImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getSavedSearch()
	 * @generated
	 */
	int SAVED_SEARCH = 37;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH__NAME = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Query</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH__QUERY = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Saved At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH__SAVED_AT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Saved Search</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Saved Search</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAVED_SEARCH_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RecordingImpl <em>Recording</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RecordingImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRecording()
	 * @generated
	 */
	int RECORDING = 38;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__KIND = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__CODE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__TITLE = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__AT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>File</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__FILE = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__SESSION = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__INSTRUMENT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Separator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__SEPARATOR = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Decimal Comma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__DECIMAL_COMMA = ENTRY_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Skip Lines</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__SKIP_LINES = ENTRY_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Cycle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__CYCLE = ENTRY_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Left Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__LEFT_OUT = ENTRY_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Channels</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__CHANNELS = ENTRY_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Marks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__MARKS = ENTRY_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Details</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING__DETAILS = ENTRY_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Recording</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 15;

	/**
	 * The number of operations of the '<em>Recording</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RecordingChannelImpl <em>Recording Channel</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RecordingChannelImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRecordingChannel()
	 * @generated
	 */
	int RECORDING_CHANNEL = 39;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__ROLE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__COLUMN = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__NAME = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__UNIT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Reversed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL__REVERSED = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Recording Channel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Recording Channel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_CHANNEL_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RecordingMarkImpl <em>Recording Mark</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RecordingMarkImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRecordingMark()
	 * @generated
	 */
	int RECORDING_MARK = 40;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__NAME = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__POSITION = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>By Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__BY_HAND = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Left Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK__LEFT_OUT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Recording Mark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Recording Mark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECORDING_MARK_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.LawFitImpl <em>Law Fit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.LawFitImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getLawFit()
	 * @generated
	 */
	int LAW_FIT = 41;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__TITLE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Law</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__LAW = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Weighting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__WEIGHTING = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>From Stretch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__FROM_STRETCH = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>To Stretch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__TO_STRETCH = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__AT = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Recordings</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT__RECORDINGS = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Law Fit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Law Fit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LAW_FIT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.GaugeStudyImpl <em>Gauge Study</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.GaugeStudyImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getGaugeStudy()
	 * @generated
	 */
	int GAUGE_STUDY = 42;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__TITLE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__AT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__KEY = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__INSTRUMENT = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__TOLERANCE = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cells</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY__CELLS = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Gauge Study</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Gauge Study</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_STUDY_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.GaugeCellImpl <em>Gauge Cell</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.GaugeCellImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getGaugeCell()
	 * @generated
	 */
	int GAUGE_CELL = 43;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL__PIECE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL__WHO = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Readings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL__READINGS = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Gauge Cell</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Gauge Cell</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_CELL_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.SpotMapImpl <em>Spot Map</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.SpotMapImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getSpotMap()
	 * @generated
	 */
	int SPOT_MAP = 44;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__TITLE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Picture</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__PICTURE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sketch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__SKETCH = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Places</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP__PLACES = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Spot Map</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Spot Map</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_MAP_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.SpotPlaceImpl <em>Spot Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.SpotPlaceImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getSpotPlace()
	 * @generated
	 */
	int SPOT_PLACE = 45;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Spot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE__SPOT = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Across</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE__ACROSS = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE__DOWN = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Spot Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Spot Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPOT_PLACE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RankingImpl <em>Ranking</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RankingImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRanking()
	 * @generated
	 */
	int RANKING = 46;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__CODE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__TITLE = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__QUESTION = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__AT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Blind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__BLIND = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Lists</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING__LISTS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Ranking</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Ranking</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANKING_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RankListImpl <em>Rank List</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RankListImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRankList()
	 * @generated
	 */
	int RANK_LIST = 47;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST__WHO = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Places</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST__PLACES = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Rank List</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Rank List</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_LIST_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.RankPlaceImpl <em>Rank Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.RankPlaceImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getRankPlace()
	 * @generated
	 */
	int RANK_PLACE = 48;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Specimen</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE__SPECIMEN = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rank</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE__RANK = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Rank Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Rank Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RANK_PLACE_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.AgeingPlanImpl <em>Ageing Plan</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.AgeingPlanImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getAgeingPlan()
	 * @generated
	 */
	int AGEING_PLAN = 49;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__TITLE = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__KEY = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Specimens</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__SPECIMENS = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__FROM = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Remind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__REMIND = ENTRY_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN__POINTS = ENTRY_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Ageing Plan</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Ageing Plan</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_PLAN_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.impl.AgeingPointImpl <em>Ageing Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.impl.AgeingPointImpl
	 * @see org.flexwright.model.impl.ModelPackageImpl#getAgeingPoint()
	 * @generated
	 */
	int AGEING_POINT = 50;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT__ID = ENTRY__ID;

	/**
	 * The feature id for the '<em><b>Provenance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT__PROVENANCE = ENTRY__PROVENANCE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT__NOTE = ENTRY__NOTE;

	/**
	 * The feature id for the '<em><b>Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT__DAYS = ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Window</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT__WINDOW = ENTRY_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Skipped</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT__SKIPPED = ENTRY_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Ageing Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT_FEATURE_COUNT = ENTRY_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Ageing Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGEING_POINT_OPERATION_COUNT = ENTRY_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.flexwright.model.Origin <em>Origin</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.Origin
	 * @see org.flexwright.model.impl.ModelPackageImpl#getOrigin()
	 * @generated
	 */
	int ORIGIN = 51;

	/**
	 * The meta object id for the '{@link org.flexwright.model.Importance <em>Importance</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.Importance
	 * @see org.flexwright.model.impl.ModelPackageImpl#getImportance()
	 * @generated
	 */
	int IMPORTANCE = 52;

	/**
	 * The meta object id for the '{@link org.flexwright.model.TargetRule <em>Target Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.TargetRule
	 * @see org.flexwright.model.impl.ModelPackageImpl#getTargetRule()
	 * @generated
	 */
	int TARGET_RULE = 53;

	/**
	 * The meta object id for the '{@link org.flexwright.model.TrialState <em>Trial State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.TrialState
	 * @see org.flexwright.model.impl.ModelPackageImpl#getTrialState()
	 * @generated
	 */
	int TRIAL_STATE = 54;

	/**
	 * The meta object id for the '{@link org.flexwright.model.StepState <em>Step State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.StepState
	 * @see org.flexwright.model.impl.ModelPackageImpl#getStepState()
	 * @generated
	 */
	int STEP_STATE = 55;

	/**
	 * The meta object id for the '{@link org.flexwright.model.PieceKind <em>Piece Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.PieceKind
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPieceKind()
	 * @generated
	 */
	int PIECE_KIND = 56;

	/**
	 * The meta object id for the '{@link org.flexwright.model.Censoring <em>Censoring</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.Censoring
	 * @see org.flexwright.model.impl.ModelPackageImpl#getCensoring()
	 * @generated
	 */
	int CENSORING = 57;

	/**
	 * The meta object id for the '{@link org.flexwright.model.Knowledge <em>Knowledge</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.Knowledge
	 * @see org.flexwright.model.impl.ModelPackageImpl#getKnowledge()
	 * @generated
	 */
	int KNOWLEDGE = 58;

	/**
	 * The meta object id for the '{@link org.flexwright.model.AttachmentKind <em>Attachment Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.AttachmentKind
	 * @see org.flexwright.model.impl.ModelPackageImpl#getAttachmentKind()
	 * @generated
	 */
	int ATTACHMENT_KIND = 59;

	/**
	 * The meta object id for the '{@link org.flexwright.model.PartRole <em>Part Role</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.PartRole
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPartRole()
	 * @generated
	 */
	int PART_ROLE = 60;

	/**
	 * The meta object id for the '{@link org.flexwright.model.AmountBasis <em>Amount Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.AmountBasis
	 * @see org.flexwright.model.impl.ModelPackageImpl#getAmountBasis()
	 * @generated
	 */
	int AMOUNT_BASIS = 61;

	/**
	 * The meta object id for the '{@link org.flexwright.model.PartsOf <em>Parts Of</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.PartsOf
	 * @see org.flexwright.model.impl.ModelPackageImpl#getPartsOf()
	 * @generated
	 */
	int PARTS_OF = 62;

	/**
	 * The meta object id for the '{@link org.flexwright.model.GateWord <em>Gate Word</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.GateWord
	 * @see org.flexwright.model.impl.ModelPackageImpl#getGateWord()
	 * @generated
	 */
	int GATE_WORD = 63;

	/**
	 * The meta object id for the '{@link org.flexwright.model.NoteKind <em>Note Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.NoteKind
	 * @see org.flexwright.model.impl.ModelPackageImpl#getNoteKind()
	 * @generated
	 */
	int NOTE_KIND = 64;

	/**
	 * The meta object id for the '{@link org.flexwright.model.ChannelRole <em>Channel Role</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.model.ChannelRole
	 * @see org.flexwright.model.impl.ModelPackageImpl#getChannelRole()
	 * @generated
	 */
	int CHANNEL_ROLE = 65;

	/**
	 * The meta object id for the '<em>Instant</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.Instant
	 * @see org.flexwright.model.impl.ModelPackageImpl#getInstant()
	 * @generated
	 */
	int INSTANT = 66;

	/**
	 * The meta object id for the '<em>Local Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see org.flexwright.model.impl.ModelPackageImpl#getLocalDate()
	 * @generated
	 */
	int LOCAL_DATE = 67;


	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Identified</em>'.
	 * @see org.flexwright.model.Identified
	 * @generated
	 */
	EClass getIdentified();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Identified#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.flexwright.model.Identified#getId()
	 * @see #getIdentified()
	 * @generated
	 */
	EAttribute getIdentified_Id();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Entry <em>Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Entry</em>'.
	 * @see org.flexwright.model.Entry
	 * @generated
	 */
	EClass getEntry();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Entry#getProvenance <em>Provenance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Provenance</em>'.
	 * @see org.flexwright.model.Entry#getProvenance()
	 * @see #getEntry()
	 * @generated
	 */
	EReference getEntry_Provenance();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Entry#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see org.flexwright.model.Entry#getNote()
	 * @see #getEntry()
	 * @generated
	 */
	EAttribute getEntry_Note();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Provenance <em>Provenance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Provenance</em>'.
	 * @see org.flexwright.model.Provenance
	 * @generated
	 */
	EClass getProvenance();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getFeature <em>Feature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feature</em>'.
	 * @see org.flexwright.model.Provenance#getFeature()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_Feature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getOrigin <em>Origin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin</em>'.
	 * @see org.flexwright.model.Provenance#getOrigin()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_Origin();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.flexwright.model.Provenance#getSource()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_Source();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getUncertainty <em>Uncertainty</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Uncertainty</em>'.
	 * @see org.flexwright.model.Provenance#getUncertainty()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_Uncertainty();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getTypedAs <em>Typed As</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Typed As</em>'.
	 * @see org.flexwright.model.Provenance#getTypedAs()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_TypedAs();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see org.flexwright.model.Provenance#getBy()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_By();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Provenance#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Provenance#getAt()
	 * @see #getProvenance()
	 * @generated
	 */
	EAttribute getProvenance_At();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Project <em>Project</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Project</em>'.
	 * @see org.flexwright.model.Project
	 * @generated
	 */
	EClass getProject();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Project#getTitle()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getJob <em>Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Job</em>'.
	 * @see org.flexwright.model.Project#getJob()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Job();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#isInvented <em>Invented</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Invented</em>'.
	 * @see org.flexwright.model.Project#isInvented()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Invented();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getCreatedAt <em>Created At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Created At</em>'.
	 * @see org.flexwright.model.Project#getCreatedAt()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_CreatedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getWrittenBy <em>Written By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Written By</em>'.
	 * @see org.flexwright.model.Project#getWrittenBy()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_WrittenBy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see org.flexwright.model.Project#getFormatVersion()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getJournalSeq <em>Journal Seq</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Journal Seq</em>'.
	 * @see org.flexwright.model.Project#getJournalSeq()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_JournalSeq();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getNeeds <em>Needs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Needs</em>'.
	 * @see org.flexwright.model.Project#getNeeds()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Needs();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getReferenceParts <em>Reference Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Reference Parts</em>'.
	 * @see org.flexwright.model.Project#getReferenceParts()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_ReferenceParts();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getTargetSheets <em>Target Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Target Sheets</em>'.
	 * @see org.flexwright.model.Project#getTargetSheets()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_TargetSheets();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getGrades <em>Grades</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Grades</em>'.
	 * @see org.flexwright.model.Project#getGrades()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Grades();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getInstruments <em>Instruments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Instruments</em>'.
	 * @see org.flexwright.model.Project#getInstruments()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Instruments();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getControlPieces <em>Control Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Control Pieces</em>'.
	 * @see org.flexwright.model.Project#getControlPieces()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_ControlPieces();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getSessions <em>Sessions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sessions</em>'.
	 * @see org.flexwright.model.Project#getSessions()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Sessions();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getTrials <em>Trials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Trials</em>'.
	 * @see org.flexwright.model.Project#getTrials()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Trials();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getRecipes <em>Recipes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Recipes</em>'.
	 * @see org.flexwright.model.Project#getRecipes()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Recipes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getAttachments <em>Attachments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Attachments</em>'.
	 * @see org.flexwright.model.Project#getAttachments()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Attachments();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getAcknowledgements <em>Acknowledgements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Acknowledgements</em>'.
	 * @see org.flexwright.model.Project#getAcknowledgements()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Acknowledgements();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getOverrides <em>Overrides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Overrides</em>'.
	 * @see org.flexwright.model.Project#getOverrides()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Overrides();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getPlugins <em>Plugins</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Plugins</em>'.
	 * @see org.flexwright.model.Project#getPlugins()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Plugins();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getMoulds <em>Moulds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Moulds</em>'.
	 * @see org.flexwright.model.Project#getMoulds()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Moulds();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getPremixes <em>Premixes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Premixes</em>'.
	 * @see org.flexwright.model.Project#getPremixes()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Premixes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getBatches <em>Batches</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Batches</em>'.
	 * @see org.flexwright.model.Project#getBatches()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Batches();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getSearches <em>Searches</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Searches</em>'.
	 * @see org.flexwright.model.Project#getSearches()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Searches();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getHourlyRate <em>Hourly Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hourly Rate</em>'.
	 * @see org.flexwright.model.Project#getHourlyRate()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_HourlyRate();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Project#getCupPrice <em>Cup Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cup Price</em>'.
	 * @see org.flexwright.model.Project#getCupPrice()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_CupPrice();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getGaugeStudies <em>Gauge Studies</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Gauge Studies</em>'.
	 * @see org.flexwright.model.Project#getGaugeStudies()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_GaugeStudies();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getSpotMaps <em>Spot Maps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Spot Maps</em>'.
	 * @see org.flexwright.model.Project#getSpotMaps()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_SpotMaps();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getLawFits <em>Law Fits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Law Fits</em>'.
	 * @see org.flexwright.model.Project#getLawFits()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_LawFits();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getRankings <em>Rankings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Rankings</em>'.
	 * @see org.flexwright.model.Project#getRankings()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Rankings();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Project#getAgeingPlans <em>Ageing Plans</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ageing Plans</em>'.
	 * @see org.flexwright.model.Project#getAgeingPlans()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_AgeingPlans();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.PluginUse <em>Plugin Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Plugin Use</em>'.
	 * @see org.flexwright.model.PluginUse
	 * @generated
	 */
	EClass getPluginUse();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PluginUse#getNsURI <em>Ns URI</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ns URI</em>'.
	 * @see org.flexwright.model.PluginUse#getNsURI()
	 * @see #getPluginUse()
	 * @generated
	 */
	EAttribute getPluginUse_NsURI();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PluginUse#getPlugin <em>Plugin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plugin</em>'.
	 * @see org.flexwright.model.PluginUse#getPlugin()
	 * @see #getPluginUse()
	 * @generated
	 */
	EAttribute getPluginUse_Plugin();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PluginUse#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see org.flexwright.model.PluginUse#getVersion()
	 * @see #getPluginUse()
	 * @generated
	 */
	EAttribute getPluginUse_Version();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Need <em>Need</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Need</em>'.
	 * @see org.flexwright.model.Need
	 * @generated
	 */
	EClass getNeed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Need#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.flexwright.model.Need#getText()
	 * @see #getNeed()
	 * @generated
	 */
	EAttribute getNeed_Text();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Need#getImportance <em>Importance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Importance</em>'.
	 * @see org.flexwright.model.Need#getImportance()
	 * @see #getNeed()
	 * @generated
	 */
	EAttribute getNeed_Importance();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.PropertyKey <em>Property Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Property Key</em>'.
	 * @see org.flexwright.model.PropertyKey
	 * @generated
	 */
	EClass getPropertyKey();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PropertyKey#getProperty <em>Property</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Property</em>'.
	 * @see org.flexwright.model.PropertyKey#getProperty()
	 * @see #getPropertyKey()
	 * @generated
	 */
	EAttribute getPropertyKey_Property();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PropertyKey#getPieceKind <em>Piece Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece Kind</em>'.
	 * @see org.flexwright.model.PropertyKey#getPieceKind()
	 * @see #getPropertyKey()
	 * @generated
	 */
	EAttribute getPropertyKey_PieceKind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PropertyKey#getSpot <em>Spot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spot</em>'.
	 * @see org.flexwright.model.PropertyKey#getSpot()
	 * @see #getPropertyKey()
	 * @generated
	 */
	EAttribute getPropertyKey_Spot();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PropertyKey#getSupport <em>Support</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Support</em>'.
	 * @see org.flexwright.model.PropertyKey#getSupport()
	 * @see #getPropertyKey()
	 * @generated
	 */
	EAttribute getPropertyKey_Support();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.PropertyKey#getDwell <em>Dwell</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dwell</em>'.
	 * @see org.flexwright.model.PropertyKey#getDwell()
	 * @see #getPropertyKey()
	 * @generated
	 */
	EAttribute getPropertyKey_Dwell();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.TargetSheet <em>Target Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Target Sheet</em>'.
	 * @see org.flexwright.model.TargetSheet
	 * @generated
	 */
	EClass getTargetSheet();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.TargetSheet#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see org.flexwright.model.TargetSheet#getVersion()
	 * @see #getTargetSheet()
	 * @generated
	 */
	EAttribute getTargetSheet_Version();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.TargetSheet#getFrozenAt <em>Frozen At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frozen At</em>'.
	 * @see org.flexwright.model.TargetSheet#getFrozenAt()
	 * @see #getTargetSheet()
	 * @generated
	 */
	EAttribute getTargetSheet_FrozenAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.TargetSheet#getFrozenBy <em>Frozen By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frozen By</em>'.
	 * @see org.flexwright.model.TargetSheet#getFrozenBy()
	 * @see #getTargetSheet()
	 * @generated
	 */
	EAttribute getTargetSheet_FrozenBy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.TargetSheet#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.flexwright.model.TargetSheet#getReason()
	 * @see #getTargetSheet()
	 * @generated
	 */
	EAttribute getTargetSheet_Reason();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.TargetSheet#getTargets <em>Targets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Targets</em>'.
	 * @see org.flexwright.model.TargetSheet#getTargets()
	 * @see #getTargetSheet()
	 * @generated
	 */
	EReference getTargetSheet_Targets();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Target <em>Target</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Target</em>'.
	 * @see org.flexwright.model.Target
	 * @generated
	 */
	EClass getTarget();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Target#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Key</em>'.
	 * @see org.flexwright.model.Target#getKey()
	 * @see #getTarget()
	 * @generated
	 */
	EReference getTarget_Key();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getRule <em>Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule</em>'.
	 * @see org.flexwright.model.Target#getRule()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Rule();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see org.flexwright.model.Target#getLow()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Low();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see org.flexwright.model.Target#getHigh()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_High();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getNominal <em>Nominal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nominal</em>'.
	 * @see org.flexwright.model.Target#getNominal()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Nominal();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getTolerance <em>Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tolerance</em>'.
	 * @see org.flexwright.model.Target#getTolerance()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Tolerance();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getWeight <em>Weight</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weight</em>'.
	 * @see org.flexwright.model.Target#getWeight()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Weight();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getRejectBelow <em>Reject Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reject Below</em>'.
	 * @see org.flexwright.model.Target#getRejectBelow()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_RejectBelow();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getRejectAbove <em>Reject Above</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reject Above</em>'.
	 * @see org.flexwright.model.Target#getRejectAbove()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_RejectAbove();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Target#getAllowedShare <em>Allowed Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Allowed Share</em>'.
	 * @see org.flexwright.model.Target#getAllowedShare()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_AllowedShare();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.MaterialGrade <em>Material Grade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Material Grade</em>'.
	 * @see org.flexwright.model.MaterialGrade
	 * @generated
	 */
	EClass getMaterialGrade();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialGrade#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.MaterialGrade#getCode()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EAttribute getMaterialGrade_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialGrade#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.MaterialGrade#getName()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EAttribute getMaterialGrade_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialGrade#getFamily <em>Family</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Family</em>'.
	 * @see org.flexwright.model.MaterialGrade#getFamily()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EAttribute getMaterialGrade_Family();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialGrade#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see org.flexwright.model.MaterialGrade#getRole()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EAttribute getMaterialGrade_Role();

	/**
	 * Returns the meta object for the attribute list '{@link org.flexwright.model.MaterialGrade#getHazards <em>Hazards</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Hazards</em>'.
	 * @see org.flexwright.model.MaterialGrade#getHazards()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EAttribute getMaterialGrade_Hazards();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.MaterialGrade#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see org.flexwright.model.MaterialGrade#getValues()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EReference getMaterialGrade_Values();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.MaterialGrade#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lots</em>'.
	 * @see org.flexwright.model.MaterialGrade#getLots()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EReference getMaterialGrade_Lots();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialGrade#getPackSize <em>Pack Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pack Size</em>'.
	 * @see org.flexwright.model.MaterialGrade#getPackSize()
	 * @see #getMaterialGrade()
	 * @generated
	 */
	EAttribute getMaterialGrade_PackSize();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.MaterialValue <em>Material Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Material Value</em>'.
	 * @see org.flexwright.model.MaterialValue
	 * @generated
	 */
	EClass getMaterialValue();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getProperty <em>Property</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Property</em>'.
	 * @see org.flexwright.model.MaterialValue#getProperty()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_Property();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.flexwright.model.MaterialValue#getUnit()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getSheetValue <em>Sheet Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Value</em>'.
	 * @see org.flexwright.model.MaterialValue#getSheetValue()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_SheetValue();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getSheetSource <em>Sheet Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Source</em>'.
	 * @see org.flexwright.model.MaterialValue#getSheetSource()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_SheetSource();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getOwnValue <em>Own Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Value</em>'.
	 * @see org.flexwright.model.MaterialValue#getOwnValue()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_OwnValue();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getOwnUncertainty <em>Own Uncertainty</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Uncertainty</em>'.
	 * @see org.flexwright.model.MaterialValue#getOwnUncertainty()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_OwnUncertainty();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialValue#getOwnSource <em>Own Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Source</em>'.
	 * @see org.flexwright.model.MaterialValue#getOwnSource()
	 * @see #getMaterialValue()
	 * @generated
	 */
	EAttribute getMaterialValue_OwnSource();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Lot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lot</em>'.
	 * @see org.flexwright.model.Lot
	 * @generated
	 */
	EClass getLot();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Lot#getCode()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getOpened <em>Opened</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opened</em>'.
	 * @see org.flexwright.model.Lot#getOpened()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Opened();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getExpires <em>Expires</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Expires</em>'.
	 * @see org.flexwright.model.Lot#getExpires()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Expires();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.flexwright.model.Lot#getPrice()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Price();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getAmount <em>Amount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount</em>'.
	 * @see org.flexwright.model.Lot#getAmount()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Amount();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getSheetDate <em>Sheet Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Date</em>'.
	 * @see org.flexwright.model.Lot#getSheetDate()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_SheetDate();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Lot#getSheetRevision <em>Sheet Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Revision</em>'.
	 * @see org.flexwright.model.Lot#getSheetRevision()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_SheetRevision();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Lot#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see org.flexwright.model.Lot#getValues()
	 * @see #getLot()
	 * @generated
	 */
	EReference getLot_Values();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Instrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Instrument</em>'.
	 * @see org.flexwright.model.Instrument
	 * @generated
	 */
	EClass getInstrument();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.Instrument#getName()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.flexwright.model.Instrument#getKind()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.flexwright.model.Instrument#getUnit()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getResolution <em>Resolution</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Resolution</em>'.
	 * @see org.flexwright.model.Instrument#getResolution()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Resolution();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getAccuracy <em>Accuracy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Accuracy</em>'.
	 * @see org.flexwright.model.Instrument#getAccuracy()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Accuracy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getScale <em>Scale</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale</em>'.
	 * @see org.flexwright.model.Instrument#getScale()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Scale();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getSpread <em>Spread</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spread</em>'.
	 * @see org.flexwright.model.Instrument#getSpread()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_Spread();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getSpreadFrom <em>Spread From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spread From</em>'.
	 * @see org.flexwright.model.Instrument#getSpreadFrom()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_SpreadFrom();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getCheckedOn <em>Checked On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Checked On</em>'.
	 * @see org.flexwright.model.Instrument#getCheckedOn()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_CheckedOn();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getCheckEveryDays <em>Check Every Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Check Every Days</em>'.
	 * @see org.flexwright.model.Instrument#getCheckEveryDays()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_CheckEveryDays();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Instrument#getCheckNote <em>Check Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Check Note</em>'.
	 * @see org.flexwright.model.Instrument#getCheckNote()
	 * @see #getInstrument()
	 * @generated
	 */
	EAttribute getInstrument_CheckNote();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Instrument#getStudy <em>Study</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Study</em>'.
	 * @see org.flexwright.model.Instrument#getStudy()
	 * @see #getInstrument()
	 * @generated
	 */
	EReference getInstrument_Study();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Session <em>Session</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Session</em>'.
	 * @see org.flexwright.model.Session
	 * @generated
	 */
	EClass getSession();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Session#getCode()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Session#getAt()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getRoomC <em>Room C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Room C</em>'.
	 * @see org.flexwright.model.Session#getRoomC()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_RoomC();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getRoomRh <em>Room Rh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Room Rh</em>'.
	 * @see org.flexwright.model.Session#getRoomRh()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_RoomRh();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.flexwright.model.Session#getWho()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_Who();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.Session#getInstruments <em>Instruments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Instruments</em>'.
	 * @see org.flexwright.model.Session#getInstruments()
	 * @see #getSession()
	 * @generated
	 */
	EReference getSession_Instruments();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Session#getControlPiece <em>Control Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Control Piece</em>'.
	 * @see org.flexwright.model.Session#getControlPiece()
	 * @see #getSession()
	 * @generated
	 */
	EReference getSession_ControlPiece();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getConditioningHours <em>Conditioning Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conditioning Hours</em>'.
	 * @see org.flexwright.model.Session#getConditioningHours()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_ConditioningHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Session#getRoom <em>Room</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Room</em>'.
	 * @see org.flexwright.model.Session#getRoom()
	 * @see #getSession()
	 * @generated
	 */
	EAttribute getSession_Room();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Specimen <em>Specimen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Specimen</em>'.
	 * @see org.flexwright.model.Specimen
	 * @generated
	 */
	EClass getSpecimen();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Specimen#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Specimen#getCode()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Specimen#getPieceKind <em>Piece Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece Kind</em>'.
	 * @see org.flexwright.model.Specimen#getPieceKind()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_PieceKind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Specimen#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see org.flexwright.model.Specimen#getThickness()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Specimen#getMadeAt <em>Made At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Made At</em>'.
	 * @see org.flexwright.model.Specimen#getMadeAt()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_MadeAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Specimen#isFailed <em>Failed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Failed</em>'.
	 * @see org.flexwright.model.Specimen#isFailed()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_Failed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Specimen#getFailReason <em>Fail Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fail Reason</em>'.
	 * @see org.flexwright.model.Specimen#getFailReason()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_FailReason();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Specimen#getMeasurements <em>Measurements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Measurements</em>'.
	 * @see org.flexwright.model.Specimen#getMeasurements()
	 * @see #getSpecimen()
	 * @generated
	 */
	EReference getSpecimen_Measurements();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Specimen#getRecordings <em>Recordings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Recordings</em>'.
	 * @see org.flexwright.model.Specimen#getRecordings()
	 * @see #getSpecimen()
	 * @generated
	 */
	EReference getSpecimen_Recordings();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.ControlPiece <em>Control Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Control Piece</em>'.
	 * @see org.flexwright.model.ControlPiece
	 * @generated
	 */
	EClass getControlPiece();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.ControlPiece#getUsual <em>Usual</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Usual</em>'.
	 * @see org.flexwright.model.ControlPiece#getUsual()
	 * @see #getControlPiece()
	 * @generated
	 */
	EAttribute getControlPiece_Usual();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.ControlPiece#getUsualSpread <em>Usual Spread</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Usual Spread</em>'.
	 * @see org.flexwright.model.ControlPiece#getUsualSpread()
	 * @see #getControlPiece()
	 * @generated
	 */
	EAttribute getControlPiece_UsualSpread();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.ControlPiece#getUsualFrom <em>Usual From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Usual From</em>'.
	 * @see org.flexwright.model.ControlPiece#getUsualFrom()
	 * @see #getControlPiece()
	 * @generated
	 */
	EAttribute getControlPiece_UsualFrom();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.ReferencePart <em>Reference Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reference Part</em>'.
	 * @see org.flexwright.model.ReferencePart
	 * @generated
	 */
	EClass getReferencePart();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.ReferencePart#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.ReferencePart#getName()
	 * @see #getReferencePart()
	 * @generated
	 */
	EAttribute getReferencePart_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.ReferencePart#getCondition <em>Condition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Condition</em>'.
	 * @see org.flexwright.model.ReferencePart#getCondition()
	 * @see #getReferencePart()
	 * @generated
	 */
	EAttribute getReferencePart_Condition();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.ReferencePart#getAgeYears <em>Age Years</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Age Years</em>'.
	 * @see org.flexwright.model.ReferencePart#getAgeYears()
	 * @see #getReferencePart()
	 * @generated
	 */
	EAttribute getReferencePart_AgeYears();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.ReferencePart#getPhotos <em>Photos</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Photos</em>'.
	 * @see org.flexwright.model.ReferencePart#getPhotos()
	 * @see #getReferencePart()
	 * @generated
	 */
	EReference getReferencePart_Photos();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Part <em>Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Part</em>'.
	 * @see org.flexwright.model.Part
	 * @generated
	 */
	EClass getPart();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.Part#getPhotos <em>Photos</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Photos</em>'.
	 * @see org.flexwright.model.Part#getPhotos()
	 * @see #getPart()
	 * @generated
	 */
	EReference getPart_Photos();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Measurement <em>Measurement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Measurement</em>'.
	 * @see org.flexwright.model.Measurement
	 * @generated
	 */
	EClass getMeasurement();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Measurement#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.flexwright.model.Measurement#getKind()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_Kind();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Measurement#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Key</em>'.
	 * @see org.flexwright.model.Measurement#getKey()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Key();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Measurement#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Measurement#getAt()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Measurement#getDelayHours <em>Delay Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Delay Hours</em>'.
	 * @see org.flexwright.model.Measurement#getDelayHours()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_DelayHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Measurement#getPieceC <em>Piece C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece C</em>'.
	 * @see org.flexwright.model.Measurement#getPieceC()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_PieceC();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Measurement#getKnowledge <em>Knowledge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Knowledge</em>'.
	 * @see org.flexwright.model.Measurement#getKnowledge()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_Knowledge();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Measurement#getSession <em>Session</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Session</em>'.
	 * @see org.flexwright.model.Measurement#getSession()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Session();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Measurement#getInstrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Instrument</em>'.
	 * @see org.flexwright.model.Measurement#getInstrument()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Instrument();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Measurement#getReadings <em>Readings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Readings</em>'.
	 * @see org.flexwright.model.Measurement#getReadings()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Readings();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Measurement#getDetails <em>Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Details</em>'.
	 * @see org.flexwright.model.Measurement#getDetails()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Details();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Measurement#getRecording <em>Recording</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Recording</em>'.
	 * @see org.flexwright.model.Measurement#getRecording()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Recording();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reading</em>'.
	 * @see org.flexwright.model.Reading
	 * @generated
	 */
	EClass getReading();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Reading#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.flexwright.model.Reading#getValue()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Value();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Reading#getCensoring <em>Censoring</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Censoring</em>'.
	 * @see org.flexwright.model.Reading#getCensoring()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Censoring();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Reading#getYes <em>Yes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Yes</em>'.
	 * @see org.flexwright.model.Reading#getYes()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Yes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Reading#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Reading#getAt()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Reading#getTypedAs <em>Typed As</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Typed As</em>'.
	 * @see org.flexwright.model.Reading#getTypedAs()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_TypedAs();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Reading#getLeftOut <em>Left Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Left Out</em>'.
	 * @see org.flexwright.model.Reading#getLeftOut()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_LeftOut();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Trial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Trial</em>'.
	 * @see org.flexwright.model.Trial
	 * @generated
	 */
	EClass getTrial();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Trial#getCode()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Trial#getTitle()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getIdea <em>Idea</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Idea</em>'.
	 * @see org.flexwright.model.Trial#getIdea()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Idea();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getRoute <em>Route</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Route</em>'.
	 * @see org.flexwright.model.Trial#getRoute()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Route();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Trial#getBasedOn <em>Based On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Based On</em>'.
	 * @see org.flexwright.model.Trial#getBasedOn()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_BasedOn();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see org.flexwright.model.Trial#getState()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_State();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getStateReason <em>State Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State Reason</em>'.
	 * @see org.flexwright.model.Trial#getStateReason()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_StateReason();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getCreatedAt <em>Created At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Created At</em>'.
	 * @see org.flexwright.model.Trial#getCreatedAt()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_CreatedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getMadeAt <em>Made At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Made At</em>'.
	 * @see org.flexwright.model.Trial#getMadeAt()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_MadeAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getConclusion <em>Conclusion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conclusion</em>'.
	 * @see org.flexwright.model.Trial#getConclusion()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Conclusion();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getCost <em>Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cost</em>'.
	 * @see org.flexwright.model.Trial#getCost()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Cost();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getHours <em>Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hours</em>'.
	 * @see org.flexwright.model.Trial#getHours()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Hours();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Trial#getSteps <em>Steps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Steps</em>'.
	 * @see org.flexwright.model.Trial#getSteps()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Steps();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Trial#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Parts</em>'.
	 * @see org.flexwright.model.Trial#getParts()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Parts();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Trial#getCalculations <em>Calculations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Calculations</em>'.
	 * @see org.flexwright.model.Trial#getCalculations()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Calculations();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.Trial#getAttachments <em>Attachments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Attachments</em>'.
	 * @see org.flexwright.model.Trial#getAttachments()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Attachments();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getContactAt <em>Contact At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact At</em>'.
	 * @see org.flexwright.model.Trial#getContactAt()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_ContactAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getCupLabel <em>Cup Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cup Label</em>'.
	 * @see org.flexwright.model.Trial#getCupLabel()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_CupLabel();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Trial#getMould <em>Mould</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mould</em>'.
	 * @see org.flexwright.model.Trial#getMould()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Mould();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Trial#getNotes <em>Notes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Notes</em>'.
	 * @see org.flexwright.model.Trial#getNotes()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Notes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Trial#getDecisions <em>Decisions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Decisions</em>'.
	 * @see org.flexwright.model.Trial#getDecisions()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Decisions();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Trial#getPartsWanted <em>Parts Wanted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parts Wanted</em>'.
	 * @see org.flexwright.model.Trial#getPartsWanted()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_PartsWanted();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Step <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Step</em>'.
	 * @see org.flexwright.model.Step
	 * @generated
	 */
	EClass getStep();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.flexwright.model.Step#getKind()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Step#getTitle()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see org.flexwright.model.Step#getState()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_State();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#isUnconfirmed <em>Unconfirmed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unconfirmed</em>'.
	 * @see org.flexwright.model.Step#isUnconfirmed()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_Unconfirmed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getConfirmedBy <em>Confirmed By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confirmed By</em>'.
	 * @see org.flexwright.model.Step#getConfirmedBy()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_ConfirmedBy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getConfirmedAt <em>Confirmed At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confirmed At</em>'.
	 * @see org.flexwright.model.Step#getConfirmedAt()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_ConfirmedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getPlannedStart <em>Planned Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Start</em>'.
	 * @see org.flexwright.model.Step#getPlannedStart()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_PlannedStart();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getPlannedDuration <em>Planned Duration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Duration</em>'.
	 * @see org.flexwright.model.Step#getPlannedDuration()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_PlannedDuration();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getStartedAt <em>Started At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Started At</em>'.
	 * @see org.flexwright.model.Step#getStartedAt()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_StartedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Step#getEndedAt <em>Ended At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ended At</em>'.
	 * @see org.flexwright.model.Step#getEndedAt()
	 * @see #getStep()
	 * @generated
	 */
	EAttribute getStep_EndedAt();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Step#getSession <em>Session</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Session</em>'.
	 * @see org.flexwright.model.Step#getSession()
	 * @see #getStep()
	 * @generated
	 */
	EReference getStep_Session();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Step#getUses <em>Uses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Uses</em>'.
	 * @see org.flexwright.model.Step#getUses()
	 * @see #getStep()
	 * @generated
	 */
	EReference getStep_Uses();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Step#getDetails <em>Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Details</em>'.
	 * @see org.flexwright.model.Step#getDetails()
	 * @see #getStep()
	 * @generated
	 */
	EReference getStep_Details();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.Step#getAttachments <em>Attachments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Attachments</em>'.
	 * @see org.flexwright.model.Step#getAttachments()
	 * @see #getStep()
	 * @generated
	 */
	EReference getStep_Attachments();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.MaterialUse <em>Material Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Material Use</em>'.
	 * @see org.flexwright.model.MaterialUse
	 * @generated
	 */
	EClass getMaterialUse();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see org.flexwright.model.MaterialUse#getRole()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_Role();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.MaterialUse#getGrade <em>Grade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Grade</em>'.
	 * @see org.flexwright.model.MaterialUse#getGrade()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EReference getMaterialUse_Grade();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.MaterialUse#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lot</em>'.
	 * @see org.flexwright.model.MaterialUse#getLot()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EReference getMaterialUse_Lot();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getPlanned <em>Planned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned</em>'.
	 * @see org.flexwright.model.MaterialUse#getPlanned()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_Planned();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.MaterialUse#getWeighings <em>Weighings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Weighings</em>'.
	 * @see org.flexwright.model.MaterialUse#getWeighings()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EReference getMaterialUse_Weighings();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parts</em>'.
	 * @see org.flexwright.model.MaterialUse#getParts()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_Parts();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getPartsBy <em>Parts By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parts By</em>'.
	 * @see org.flexwright.model.MaterialUse#getPartsBy()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_PartsBy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getPartsOf <em>Parts Of</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parts Of</em>'.
	 * @see org.flexwright.model.MaterialUse#getPartsOf()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_PartsOf();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getMoisture <em>Moisture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Moisture</em>'.
	 * @see org.flexwright.model.MaterialUse#getMoisture()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_Moisture();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MaterialUse#getDried <em>Dried</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dried</em>'.
	 * @see org.flexwright.model.MaterialUse#getDried()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EAttribute getMaterialUse_Dried();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.MaterialUse#getPremix <em>Premix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Premix</em>'.
	 * @see org.flexwright.model.MaterialUse#getPremix()
	 * @see #getMaterialUse()
	 * @generated
	 */
	EReference getMaterialUse_Premix();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Weighing <em>Weighing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Weighing</em>'.
	 * @see org.flexwright.model.Weighing
	 * @generated
	 */
	EClass getWeighing();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Weighing#getGross <em>Gross</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gross</em>'.
	 * @see org.flexwright.model.Weighing#getGross()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_Gross();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Weighing#getTare <em>Tare</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tare</em>'.
	 * @see org.flexwright.model.Weighing#getTare()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_Tare();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Weighing#getNet <em>Net</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Net</em>'.
	 * @see org.flexwright.model.Weighing#getNet()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_Net();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Weighing#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Weighing#getAt()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Weighing#isCorrection <em>Correction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Correction</em>'.
	 * @see org.flexwright.model.Weighing#isCorrection()
	 * @see #getWeighing()
	 * @generated
	 */
	EAttribute getWeighing_Correction();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Weighing#getInstrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Instrument</em>'.
	 * @see org.flexwright.model.Weighing#getInstrument()
	 * @see #getWeighing()
	 * @generated
	 */
	EReference getWeighing_Instrument();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Attachment <em>Attachment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Attachment</em>'.
	 * @see org.flexwright.model.Attachment
	 * @generated
	 */
	EClass getAttachment();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Attachment#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.flexwright.model.Attachment#getKind()
	 * @see #getAttachment()
	 * @generated
	 */
	EAttribute getAttachment_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Attachment#getFileName <em>File Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File Name</em>'.
	 * @see org.flexwright.model.Attachment#getFileName()
	 * @see #getAttachment()
	 * @generated
	 */
	EAttribute getAttachment_FileName();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Attachment#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path</em>'.
	 * @see org.flexwright.model.Attachment#getPath()
	 * @see #getAttachment()
	 * @generated
	 */
	EAttribute getAttachment_Path();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Attachment#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see org.flexwright.model.Attachment#getSha256()
	 * @see #getAttachment()
	 * @generated
	 */
	EAttribute getAttachment_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Attachment#getCaption <em>Caption</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Caption</em>'.
	 * @see org.flexwright.model.Attachment#getCaption()
	 * @see #getAttachment()
	 * @generated
	 */
	EAttribute getAttachment_Caption();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Attachment#getAddedAt <em>Added At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Added At</em>'.
	 * @see org.flexwright.model.Attachment#getAddedAt()
	 * @see #getAttachment()
	 * @generated
	 */
	EAttribute getAttachment_AddedAt();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Recipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Recipe</em>'.
	 * @see org.flexwright.model.Recipe
	 * @generated
	 */
	EClass getRecipe();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Recipe#getCode()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see org.flexwright.model.Recipe#getVersion()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Version();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getFrozenAt <em>Frozen At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frozen At</em>'.
	 * @see org.flexwright.model.Recipe#getFrozenAt()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_FrozenAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getFrozenBy <em>Frozen By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frozen By</em>'.
	 * @see org.flexwright.model.Recipe#getFrozenBy()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_FrozenBy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getLimits <em>Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limits</em>'.
	 * @see org.flexwright.model.Recipe#getLimits()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Limits();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Recipe#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>From</em>'.
	 * @see org.flexwright.model.Recipe#getFrom()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_From();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Recipe#getPlan <em>Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Plan</em>'.
	 * @see org.flexwright.model.Recipe#getPlan()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Plan();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getMaterials <em>Materials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Materials</em>'.
	 * @see org.flexwright.model.Recipe#getMaterials()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Materials();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Recipe#getAsMade <em>As Made</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>As Made</em>'.
	 * @see org.flexwright.model.Recipe#getAsMade()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_AsMade();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Recipe#getTargets <em>Targets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Targets</em>'.
	 * @see org.flexwright.model.Recipe#getTargets()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Targets();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getChanges <em>Changes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Changes</em>'.
	 * @see org.flexwright.model.Recipe#getChanges()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Changes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getSessions <em>Sessions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sessions</em>'.
	 * @see org.flexwright.model.Recipe#getSessions()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Sessions();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getInstruments <em>Instruments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Instruments</em>'.
	 * @see org.flexwright.model.Recipe#getInstruments()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Instruments();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getPremixes <em>Premixes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Premixes</em>'.
	 * @see org.flexwright.model.Recipe#getPremixes()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Premixes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getAttachments <em>Attachments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Attachments</em>'.
	 * @see org.flexwright.model.Recipe#getAttachments()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Attachments();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Recipe#getMould <em>Mould</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Mould</em>'.
	 * @see org.flexwright.model.Recipe#getMould()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Mould();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Recipe#getTitle()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#getJob <em>Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Job</em>'.
	 * @see org.flexwright.model.Recipe#getJob()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Job();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recipe#isInvented <em>Invented</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Invented</em>'.
	 * @see org.flexwright.model.Recipe#isInvented()
	 * @see #getRecipe()
	 * @generated
	 */
	EAttribute getRecipe_Invented();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getNeeds <em>Needs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Needs</em>'.
	 * @see org.flexwright.model.Recipe#getNeeds()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Needs();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getReferences <em>References</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>References</em>'.
	 * @see org.flexwright.model.Recipe#getReferences()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_References();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getOverrides <em>Overrides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Overrides</em>'.
	 * @see org.flexwright.model.Recipe#getOverrides()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Overrides();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recipe#getAcknowledgements <em>Acknowledgements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Acknowledgements</em>'.
	 * @see org.flexwright.model.Recipe#getAcknowledgements()
	 * @see #getRecipe()
	 * @generated
	 */
	EReference getRecipe_Acknowledgements();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Acknowledgement <em>Acknowledgement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Acknowledgement</em>'.
	 * @see org.flexwright.model.Acknowledgement
	 * @generated
	 */
	EClass getAcknowledgement();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Acknowledgement#getPrompt <em>Prompt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Prompt</em>'.
	 * @see org.flexwright.model.Acknowledgement#getPrompt()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EAttribute getAcknowledgement_Prompt();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Acknowledgement#getSession <em>Session</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Session</em>'.
	 * @see org.flexwright.model.Acknowledgement#getSession()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EReference getAcknowledgement_Session();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Acknowledgement#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lot</em>'.
	 * @see org.flexwright.model.Acknowledgement#getLot()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EReference getAcknowledgement_Lot();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Acknowledgement#getStep <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Step</em>'.
	 * @see org.flexwright.model.Acknowledgement#getStep()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EReference getAcknowledgement_Step();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Acknowledgement#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.flexwright.model.Acknowledgement#getWho()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EAttribute getAcknowledgement_Who();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Acknowledgement#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Acknowledgement#getAt()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EAttribute getAcknowledgement_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Acknowledgement#getSheetDate <em>Sheet Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Date</em>'.
	 * @see org.flexwright.model.Acknowledgement#getSheetDate()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EAttribute getAcknowledgement_SheetDate();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Acknowledgement#getSheetRevision <em>Sheet Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Revision</em>'.
	 * @see org.flexwright.model.Acknowledgement#getSheetRevision()
	 * @see #getAcknowledgement()
	 * @generated
	 */
	EAttribute getAcknowledgement_SheetRevision();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.StopOverride <em>Stop Override</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stop Override</em>'.
	 * @see org.flexwright.model.StopOverride
	 * @generated
	 */
	EClass getStopOverride();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.StopOverride#getRule <em>Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule</em>'.
	 * @see org.flexwright.model.StopOverride#getRule()
	 * @see #getStopOverride()
	 * @generated
	 */
	EAttribute getStopOverride_Rule();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.StopOverride#getSubject <em>Subject</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Subject</em>'.
	 * @see org.flexwright.model.StopOverride#getSubject()
	 * @see #getStopOverride()
	 * @generated
	 */
	EAttribute getStopOverride_Subject();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.StopOverride#getInputHash <em>Input Hash</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Input Hash</em>'.
	 * @see org.flexwright.model.StopOverride#getInputHash()
	 * @see #getStopOverride()
	 * @generated
	 */
	EAttribute getStopOverride_InputHash();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.StopOverride#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.flexwright.model.StopOverride#getReason()
	 * @see #getStopOverride()
	 * @generated
	 */
	EAttribute getStopOverride_Reason();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.StopOverride#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.flexwright.model.StopOverride#getWho()
	 * @see #getStopOverride()
	 * @generated
	 */
	EAttribute getStopOverride_Who();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.StopOverride#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.StopOverride#getAt()
	 * @see #getStopOverride()
	 * @generated
	 */
	EAttribute getStopOverride_At();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.CalculationRun <em>Calculation Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Calculation Run</em>'.
	 * @see org.flexwright.model.CalculationRun
	 * @generated
	 */
	EClass getCalculationRun();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.CalculationRun#getCalculation <em>Calculation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calculation</em>'.
	 * @see org.flexwright.model.CalculationRun#getCalculation()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EAttribute getCalculationRun_Calculation();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.CalculationRun#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see org.flexwright.model.CalculationRun#getVersion()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EAttribute getCalculationRun_Version();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.CalculationRun#getProgramVersion <em>Program Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Program Version</em>'.
	 * @see org.flexwright.model.CalculationRun#getProgramVersion()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EAttribute getCalculationRun_ProgramVersion();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.CalculationRun#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.CalculationRun#getAt()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EAttribute getCalculationRun_At();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.CalculationRun#getInputs <em>Inputs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inputs</em>'.
	 * @see org.flexwright.model.CalculationRun#getInputs()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EReference getCalculationRun_Inputs();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.CalculationRun#getResults <em>Results</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Results</em>'.
	 * @see org.flexwright.model.CalculationRun#getResults()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EReference getCalculationRun_Results();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.CalculationRun#getRefusal <em>Refusal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Refusal</em>'.
	 * @see org.flexwright.model.CalculationRun#getRefusal()
	 * @see #getCalculationRun()
	 * @generated
	 */
	EAttribute getCalculationRun_Refusal();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.RunInput <em>Run Input</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Run Input</em>'.
	 * @see org.flexwright.model.RunInput
	 * @generated
	 */
	EClass getRunInput();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunInput#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.RunInput#getName()
	 * @see #getRunInput()
	 * @generated
	 */
	EAttribute getRunInput_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunInput#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.flexwright.model.RunInput#getValue()
	 * @see #getRunInput()
	 * @generated
	 */
	EAttribute getRunInput_Value();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunInput#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.flexwright.model.RunInput#getText()
	 * @see #getRunInput()
	 * @generated
	 */
	EAttribute getRunInput_Text();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunInput#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.flexwright.model.RunInput#getUnit()
	 * @see #getRunInput()
	 * @generated
	 */
	EAttribute getRunInput_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunInput#getOrigin <em>Origin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin</em>'.
	 * @see org.flexwright.model.RunInput#getOrigin()
	 * @see #getRunInput()
	 * @generated
	 */
	EAttribute getRunInput_Origin();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunInput#getBoundTo <em>Bound To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bound To</em>'.
	 * @see org.flexwright.model.RunInput#getBoundTo()
	 * @see #getRunInput()
	 * @generated
	 */
	EAttribute getRunInput_BoundTo();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.RunResult <em>Run Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Run Result</em>'.
	 * @see org.flexwright.model.RunResult
	 * @generated
	 */
	EClass getRunResult();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.RunResult#getName()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see org.flexwright.model.RunResult#getLow()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_Low();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getLikely <em>Likely</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Likely</em>'.
	 * @see org.flexwright.model.RunResult#getLikely()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_Likely();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see org.flexwright.model.RunResult#getHigh()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_High();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.flexwright.model.RunResult#getText()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_Text();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.flexwright.model.RunResult#getUnit()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RunResult#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.flexwright.model.RunResult#getSource()
	 * @see #getRunResult()
	 * @generated
	 */
	EAttribute getRunResult_Source();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.BenchNote <em>Bench Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bench Note</em>'.
	 * @see org.flexwright.model.BenchNote
	 * @generated
	 */
	EClass getBenchNote();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.BenchNote#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.flexwright.model.BenchNote#getKind()
	 * @see #getBenchNote()
	 * @generated
	 */
	EAttribute getBenchNote_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.BenchNote#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.BenchNote#getAt()
	 * @see #getBenchNote()
	 * @generated
	 */
	EAttribute getBenchNote_At();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.BenchNote#getStep <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Step</em>'.
	 * @see org.flexwright.model.BenchNote#getStep()
	 * @see #getBenchNote()
	 * @generated
	 */
	EReference getBenchNote_Step();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.BenchNote#getAttachment <em>Attachment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Attachment</em>'.
	 * @see org.flexwright.model.BenchNote#getAttachment()
	 * @see #getBenchNote()
	 * @generated
	 */
	EReference getBenchNote_Attachment();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.BenchNote#getSortedAt <em>Sorted At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sorted At</em>'.
	 * @see org.flexwright.model.BenchNote#getSortedAt()
	 * @see #getBenchNote()
	 * @generated
	 */
	EAttribute getBenchNote_SortedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.BenchNote#getSortedAs <em>Sorted As</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sorted As</em>'.
	 * @see org.flexwright.model.BenchNote#getSortedAs()
	 * @see #getBenchNote()
	 * @generated
	 */
	EAttribute getBenchNote_SortedAs();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Decision <em>Decision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Decision</em>'.
	 * @see org.flexwright.model.Decision
	 * @generated
	 */
	EClass getDecision();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Decision#getWord <em>Word</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Word</em>'.
	 * @see org.flexwright.model.Decision#getWord()
	 * @see #getDecision()
	 * @generated
	 */
	EAttribute getDecision_Word();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Decision#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Decision#getAt()
	 * @see #getDecision()
	 * @generated
	 */
	EAttribute getDecision_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Decision#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.flexwright.model.Decision#getWho()
	 * @see #getDecision()
	 * @generated
	 */
	EAttribute getDecision_Who();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Decision#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.flexwright.model.Decision#getReason()
	 * @see #getDecision()
	 * @generated
	 */
	EAttribute getDecision_Reason();

	/**
	 * Returns the meta object for the attribute list '{@link org.flexwright.model.Decision#getOpen <em>Open</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Open</em>'.
	 * @see org.flexwright.model.Decision#getOpen()
	 * @see #getDecision()
	 * @generated
	 */
	EAttribute getDecision_Open();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Decision#getStep <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Step</em>'.
	 * @see org.flexwright.model.Decision#getStep()
	 * @see #getDecision()
	 * @generated
	 */
	EReference getDecision_Step();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Mould <em>Mould</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mould</em>'.
	 * @see org.flexwright.model.Mould
	 * @generated
	 */
	EClass getMould();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Mould#getCode()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.Mould#getName()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see org.flexwright.model.Mould#getMaterial()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getMadeOn <em>Made On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Made On</em>'.
	 * @see org.flexwright.model.Mould#getMadeOn()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_MadeOn();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getCavities <em>Cavities</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cavities</em>'.
	 * @see org.flexwright.model.Mould#getCavities()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_Cavities();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getCastsBefore <em>Casts Before</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Casts Before</em>'.
	 * @see org.flexwright.model.Mould#getCastsBefore()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_CastsBefore();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getCastsLimit <em>Casts Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Casts Limit</em>'.
	 * @see org.flexwright.model.Mould#getCastsLimit()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_CastsLimit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getTurnMinutes <em>Turn Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn Minutes</em>'.
	 * @see org.flexwright.model.Mould#getTurnMinutes()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_TurnMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Mould#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.flexwright.model.Mould#getPrice()
	 * @see #getMould()
	 * @generated
	 */
	EAttribute getMould_Price();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Mould#getCasts <em>Casts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Casts</em>'.
	 * @see org.flexwright.model.Mould#getCasts()
	 * @see #getMould()
	 * @generated
	 */
	EReference getMould_Casts();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.MouldCast <em>Mould Cast</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mould Cast</em>'.
	 * @see org.flexwright.model.MouldCast
	 * @generated
	 */
	EClass getMouldCast();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MouldCast#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.MouldCast#getAt()
	 * @see #getMouldCast()
	 * @generated
	 */
	EAttribute getMouldCast_At();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.MouldCast#getTrial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Trial</em>'.
	 * @see org.flexwright.model.MouldCast#getTrial()
	 * @see #getMouldCast()
	 * @generated
	 */
	EReference getMouldCast_Trial();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MouldCast#getRelease <em>Release</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Release</em>'.
	 * @see org.flexwright.model.MouldCast#getRelease()
	 * @see #getMouldCast()
	 * @generated
	 */
	EAttribute getMouldCast_Release();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MouldCast#getReleasedWell <em>Released Well</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Released Well</em>'.
	 * @see org.flexwright.model.MouldCast#getReleasedWell()
	 * @see #getMouldCast()
	 * @generated
	 */
	EAttribute getMouldCast_ReleasedWell();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.MouldCast#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parts</em>'.
	 * @see org.flexwright.model.MouldCast#getParts()
	 * @see #getMouldCast()
	 * @generated
	 */
	EAttribute getMouldCast_Parts();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Premix <em>Premix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Premix</em>'.
	 * @see org.flexwright.model.Premix
	 * @generated
	 */
	EClass getPremix();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Premix#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Premix#getCode()
	 * @see #getPremix()
	 * @generated
	 */
	EAttribute getPremix_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Premix#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Premix#getTitle()
	 * @see #getPremix()
	 * @generated
	 */
	EAttribute getPremix_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Premix#getMadeAt <em>Made At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Made At</em>'.
	 * @see org.flexwright.model.Premix#getMadeAt()
	 * @see #getPremix()
	 * @generated
	 */
	EAttribute getPremix_MadeAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Premix#getRestedHours <em>Rested Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rested Hours</em>'.
	 * @see org.flexwright.model.Premix#getRestedHours()
	 * @see #getPremix()
	 * @generated
	 */
	EAttribute getPremix_RestedHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Premix#getDriedC <em>Dried C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dried C</em>'.
	 * @see org.flexwright.model.Premix#getDriedC()
	 * @see #getPremix()
	 * @generated
	 */
	EAttribute getPremix_DriedC();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Premix#getDriedHours <em>Dried Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dried Hours</em>'.
	 * @see org.flexwright.model.Premix#getDriedHours()
	 * @see #getPremix()
	 * @generated
	 */
	EAttribute getPremix_DriedHours();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Premix#getIngredients <em>Ingredients</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ingredients</em>'.
	 * @see org.flexwright.model.Premix#getIngredients()
	 * @see #getPremix()
	 * @generated
	 */
	EReference getPremix_Ingredients();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Batch <em>Batch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Batch</em>'.
	 * @see org.flexwright.model.Batch
	 * @generated
	 */
	EClass getBatch();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Batch#getCode()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Batch#getTitle()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_Title();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Batch#getRecipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Recipe</em>'.
	 * @see org.flexwright.model.Batch#getRecipe()
	 * @see #getBatch()
	 * @generated
	 */
	EReference getBatch_Recipe();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getWanted <em>Wanted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wanted</em>'.
	 * @see org.flexwright.model.Batch#getWanted()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_Wanted();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getSpares <em>Spares</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spares</em>'.
	 * @see org.flexwright.model.Batch#getSpares()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_Spares();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getCreatedAt <em>Created At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Created At</em>'.
	 * @see org.flexwright.model.Batch#getCreatedAt()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_CreatedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getNeededBy <em>Needed By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Needed By</em>'.
	 * @see org.flexwright.model.Batch#getNeededBy()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_NeededBy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getClosedAt <em>Closed At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Closed At</em>'.
	 * @see org.flexwright.model.Batch#getClosedAt()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_ClosedAt();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getRejectLimit <em>Reject Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reject Limit</em>'.
	 * @see org.flexwright.model.Batch#getRejectLimit()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_RejectLimit();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.Batch#getPots <em>Pots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Pots</em>'.
	 * @see org.flexwright.model.Batch#getPots()
	 * @see #getBatch()
	 * @generated
	 */
	EReference getBatch_Pots();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Batch#getStartAt <em>Start At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Start At</em>'.
	 * @see org.flexwright.model.Batch#getStartAt()
	 * @see #getBatch()
	 * @generated
	 */
	EAttribute getBatch_StartAt();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.SavedSearch <em>Saved Search</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Saved Search</em>'.
	 * @see org.flexwright.model.SavedSearch
	 * @generated
	 */
	EClass getSavedSearch();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SavedSearch#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.SavedSearch#getName()
	 * @see #getSavedSearch()
	 * @generated
	 */
	EAttribute getSavedSearch_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SavedSearch#getQuery <em>Query</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Query</em>'.
	 * @see org.flexwright.model.SavedSearch#getQuery()
	 * @see #getSavedSearch()
	 * @generated
	 */
	EAttribute getSavedSearch_Query();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SavedSearch#getSavedAt <em>Saved At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Saved At</em>'.
	 * @see org.flexwright.model.SavedSearch#getSavedAt()
	 * @see #getSavedSearch()
	 * @generated
	 */
	EAttribute getSavedSearch_SavedAt();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Recording <em>Recording</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Recording</em>'.
	 * @see org.flexwright.model.Recording
	 * @generated
	 */
	EClass getRecording();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.flexwright.model.Recording#getKind()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Recording#getCode()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Recording#getTitle()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Recording#getAt()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_At();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Recording#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>File</em>'.
	 * @see org.flexwright.model.Recording#getFile()
	 * @see #getRecording()
	 * @generated
	 */
	EReference getRecording_File();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Recording#getSession <em>Session</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Session</em>'.
	 * @see org.flexwright.model.Recording#getSession()
	 * @see #getRecording()
	 * @generated
	 */
	EReference getRecording_Session();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.Recording#getInstrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Instrument</em>'.
	 * @see org.flexwright.model.Recording#getInstrument()
	 * @see #getRecording()
	 * @generated
	 */
	EReference getRecording_Instrument();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getSeparator <em>Separator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Separator</em>'.
	 * @see org.flexwright.model.Recording#getSeparator()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_Separator();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getDecimalComma <em>Decimal Comma</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Decimal Comma</em>'.
	 * @see org.flexwright.model.Recording#getDecimalComma()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_DecimalComma();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getSkipLines <em>Skip Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Skip Lines</em>'.
	 * @see org.flexwright.model.Recording#getSkipLines()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_SkipLines();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getCycle <em>Cycle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cycle</em>'.
	 * @see org.flexwright.model.Recording#getCycle()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_Cycle();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Recording#getLeftOut <em>Left Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Left Out</em>'.
	 * @see org.flexwright.model.Recording#getLeftOut()
	 * @see #getRecording()
	 * @generated
	 */
	EAttribute getRecording_LeftOut();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recording#getChannels <em>Channels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Channels</em>'.
	 * @see org.flexwright.model.Recording#getChannels()
	 * @see #getRecording()
	 * @generated
	 */
	EReference getRecording_Channels();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Recording#getMarks <em>Marks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Marks</em>'.
	 * @see org.flexwright.model.Recording#getMarks()
	 * @see #getRecording()
	 * @generated
	 */
	EReference getRecording_Marks();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.Recording#getDetails <em>Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Details</em>'.
	 * @see org.flexwright.model.Recording#getDetails()
	 * @see #getRecording()
	 * @generated
	 */
	EReference getRecording_Details();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.RecordingChannel <em>Recording Channel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Recording Channel</em>'.
	 * @see org.flexwright.model.RecordingChannel
	 * @generated
	 */
	EClass getRecordingChannel();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingChannel#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see org.flexwright.model.RecordingChannel#getRole()
	 * @see #getRecordingChannel()
	 * @generated
	 */
	EAttribute getRecordingChannel_Role();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingChannel#getColumn <em>Column</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Column</em>'.
	 * @see org.flexwright.model.RecordingChannel#getColumn()
	 * @see #getRecordingChannel()
	 * @generated
	 */
	EAttribute getRecordingChannel_Column();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingChannel#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.RecordingChannel#getName()
	 * @see #getRecordingChannel()
	 * @generated
	 */
	EAttribute getRecordingChannel_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingChannel#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.flexwright.model.RecordingChannel#getUnit()
	 * @see #getRecordingChannel()
	 * @generated
	 */
	EAttribute getRecordingChannel_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingChannel#getReversed <em>Reversed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reversed</em>'.
	 * @see org.flexwright.model.RecordingChannel#getReversed()
	 * @see #getRecordingChannel()
	 * @generated
	 */
	EAttribute getRecordingChannel_Reversed();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.RecordingMark <em>Recording Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Recording Mark</em>'.
	 * @see org.flexwright.model.RecordingMark
	 * @generated
	 */
	EClass getRecordingMark();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingMark#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.flexwright.model.RecordingMark#getName()
	 * @see #getRecordingMark()
	 * @generated
	 */
	EAttribute getRecordingMark_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingMark#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see org.flexwright.model.RecordingMark#getPosition()
	 * @see #getRecordingMark()
	 * @generated
	 */
	EAttribute getRecordingMark_Position();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingMark#getByHand <em>By Hand</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By Hand</em>'.
	 * @see org.flexwright.model.RecordingMark#getByHand()
	 * @see #getRecordingMark()
	 * @generated
	 */
	EAttribute getRecordingMark_ByHand();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RecordingMark#getLeftOut <em>Left Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Left Out</em>'.
	 * @see org.flexwright.model.RecordingMark#getLeftOut()
	 * @see #getRecordingMark()
	 * @generated
	 */
	EAttribute getRecordingMark_LeftOut();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.LawFit <em>Law Fit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Law Fit</em>'.
	 * @see org.flexwright.model.LawFit
	 * @generated
	 */
	EClass getLawFit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.LawFit#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.LawFit#getTitle()
	 * @see #getLawFit()
	 * @generated
	 */
	EAttribute getLawFit_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.LawFit#getLaw <em>Law</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Law</em>'.
	 * @see org.flexwright.model.LawFit#getLaw()
	 * @see #getLawFit()
	 * @generated
	 */
	EAttribute getLawFit_Law();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.LawFit#getWeighting <em>Weighting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weighting</em>'.
	 * @see org.flexwright.model.LawFit#getWeighting()
	 * @see #getLawFit()
	 * @generated
	 */
	EAttribute getLawFit_Weighting();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.LawFit#getFromStretch <em>From Stretch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From Stretch</em>'.
	 * @see org.flexwright.model.LawFit#getFromStretch()
	 * @see #getLawFit()
	 * @generated
	 */
	EAttribute getLawFit_FromStretch();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.LawFit#getToStretch <em>To Stretch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Stretch</em>'.
	 * @see org.flexwright.model.LawFit#getToStretch()
	 * @see #getLawFit()
	 * @generated
	 */
	EAttribute getLawFit_ToStretch();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.LawFit#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.LawFit#getAt()
	 * @see #getLawFit()
	 * @generated
	 */
	EAttribute getLawFit_At();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.LawFit#getRecordings <em>Recordings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Recordings</em>'.
	 * @see org.flexwright.model.LawFit#getRecordings()
	 * @see #getLawFit()
	 * @generated
	 */
	EReference getLawFit_Recordings();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.GaugeStudy <em>Gauge Study</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Gauge Study</em>'.
	 * @see org.flexwright.model.GaugeStudy
	 * @generated
	 */
	EClass getGaugeStudy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.GaugeStudy#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.GaugeStudy#getCode()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EAttribute getGaugeStudy_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.GaugeStudy#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.GaugeStudy#getTitle()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EAttribute getGaugeStudy_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.GaugeStudy#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.GaugeStudy#getAt()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EAttribute getGaugeStudy_At();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.GaugeStudy#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Key</em>'.
	 * @see org.flexwright.model.GaugeStudy#getKey()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EReference getGaugeStudy_Key();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.GaugeStudy#getInstrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Instrument</em>'.
	 * @see org.flexwright.model.GaugeStudy#getInstrument()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EReference getGaugeStudy_Instrument();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.GaugeStudy#getTolerance <em>Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tolerance</em>'.
	 * @see org.flexwright.model.GaugeStudy#getTolerance()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EAttribute getGaugeStudy_Tolerance();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.GaugeStudy#getCells <em>Cells</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Cells</em>'.
	 * @see org.flexwright.model.GaugeStudy#getCells()
	 * @see #getGaugeStudy()
	 * @generated
	 */
	EReference getGaugeStudy_Cells();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.GaugeCell <em>Gauge Cell</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Gauge Cell</em>'.
	 * @see org.flexwright.model.GaugeCell
	 * @generated
	 */
	EClass getGaugeCell();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.GaugeCell#getPiece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece</em>'.
	 * @see org.flexwright.model.GaugeCell#getPiece()
	 * @see #getGaugeCell()
	 * @generated
	 */
	EAttribute getGaugeCell_Piece();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.GaugeCell#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.flexwright.model.GaugeCell#getWho()
	 * @see #getGaugeCell()
	 * @generated
	 */
	EAttribute getGaugeCell_Who();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.GaugeCell#getReadings <em>Readings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Readings</em>'.
	 * @see org.flexwright.model.GaugeCell#getReadings()
	 * @see #getGaugeCell()
	 * @generated
	 */
	EReference getGaugeCell_Readings();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.SpotMap <em>Spot Map</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Spot Map</em>'.
	 * @see org.flexwright.model.SpotMap
	 * @generated
	 */
	EClass getSpotMap();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SpotMap#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.SpotMap#getTitle()
	 * @see #getSpotMap()
	 * @generated
	 */
	EAttribute getSpotMap_Title();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.SpotMap#getPicture <em>Picture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Picture</em>'.
	 * @see org.flexwright.model.SpotMap#getPicture()
	 * @see #getSpotMap()
	 * @generated
	 */
	EReference getSpotMap_Picture();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SpotMap#getSketch <em>Sketch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sketch</em>'.
	 * @see org.flexwright.model.SpotMap#getSketch()
	 * @see #getSpotMap()
	 * @generated
	 */
	EAttribute getSpotMap_Sketch();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.SpotMap#getPlaces <em>Places</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Places</em>'.
	 * @see org.flexwright.model.SpotMap#getPlaces()
	 * @see #getSpotMap()
	 * @generated
	 */
	EReference getSpotMap_Places();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.SpotPlace <em>Spot Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Spot Place</em>'.
	 * @see org.flexwright.model.SpotPlace
	 * @generated
	 */
	EClass getSpotPlace();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SpotPlace#getSpot <em>Spot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spot</em>'.
	 * @see org.flexwright.model.SpotPlace#getSpot()
	 * @see #getSpotPlace()
	 * @generated
	 */
	EAttribute getSpotPlace_Spot();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SpotPlace#getAcross <em>Across</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Across</em>'.
	 * @see org.flexwright.model.SpotPlace#getAcross()
	 * @see #getSpotPlace()
	 * @generated
	 */
	EAttribute getSpotPlace_Across();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.SpotPlace#getDown <em>Down</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Down</em>'.
	 * @see org.flexwright.model.SpotPlace#getDown()
	 * @see #getSpotPlace()
	 * @generated
	 */
	EAttribute getSpotPlace_Down();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.Ranking <em>Ranking</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ranking</em>'.
	 * @see org.flexwright.model.Ranking
	 * @generated
	 */
	EClass getRanking();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Ranking#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.flexwright.model.Ranking#getCode()
	 * @see #getRanking()
	 * @generated
	 */
	EAttribute getRanking_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Ranking#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.Ranking#getTitle()
	 * @see #getRanking()
	 * @generated
	 */
	EAttribute getRanking_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Ranking#getQuestion <em>Question</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Question</em>'.
	 * @see org.flexwright.model.Ranking#getQuestion()
	 * @see #getRanking()
	 * @generated
	 */
	EAttribute getRanking_Question();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Ranking#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.flexwright.model.Ranking#getAt()
	 * @see #getRanking()
	 * @generated
	 */
	EAttribute getRanking_At();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.Ranking#getBlind <em>Blind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blind</em>'.
	 * @see org.flexwright.model.Ranking#getBlind()
	 * @see #getRanking()
	 * @generated
	 */
	EAttribute getRanking_Blind();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.Ranking#getLists <em>Lists</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lists</em>'.
	 * @see org.flexwright.model.Ranking#getLists()
	 * @see #getRanking()
	 * @generated
	 */
	EReference getRanking_Lists();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.RankList <em>Rank List</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rank List</em>'.
	 * @see org.flexwright.model.RankList
	 * @generated
	 */
	EClass getRankList();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RankList#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.flexwright.model.RankList#getWho()
	 * @see #getRankList()
	 * @generated
	 */
	EAttribute getRankList_Who();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.RankList#getPlaces <em>Places</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Places</em>'.
	 * @see org.flexwright.model.RankList#getPlaces()
	 * @see #getRankList()
	 * @generated
	 */
	EReference getRankList_Places();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.RankPlace <em>Rank Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rank Place</em>'.
	 * @see org.flexwright.model.RankPlace
	 * @generated
	 */
	EClass getRankPlace();

	/**
	 * Returns the meta object for the reference '{@link org.flexwright.model.RankPlace#getSpecimen <em>Specimen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Specimen</em>'.
	 * @see org.flexwright.model.RankPlace#getSpecimen()
	 * @see #getRankPlace()
	 * @generated
	 */
	EReference getRankPlace_Specimen();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.RankPlace#getRank <em>Rank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rank</em>'.
	 * @see org.flexwright.model.RankPlace#getRank()
	 * @see #getRankPlace()
	 * @generated
	 */
	EAttribute getRankPlace_Rank();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.AgeingPlan <em>Ageing Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ageing Plan</em>'.
	 * @see org.flexwright.model.AgeingPlan
	 * @generated
	 */
	EClass getAgeingPlan();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.AgeingPlan#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.flexwright.model.AgeingPlan#getTitle()
	 * @see #getAgeingPlan()
	 * @generated
	 */
	EAttribute getAgeingPlan_Title();

	/**
	 * Returns the meta object for the containment reference '{@link org.flexwright.model.AgeingPlan#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Key</em>'.
	 * @see org.flexwright.model.AgeingPlan#getKey()
	 * @see #getAgeingPlan()
	 * @generated
	 */
	EReference getAgeingPlan_Key();

	/**
	 * Returns the meta object for the reference list '{@link org.flexwright.model.AgeingPlan#getSpecimens <em>Specimens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Specimens</em>'.
	 * @see org.flexwright.model.AgeingPlan#getSpecimens()
	 * @see #getAgeingPlan()
	 * @generated
	 */
	EReference getAgeingPlan_Specimens();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.AgeingPlan#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.flexwright.model.AgeingPlan#getFrom()
	 * @see #getAgeingPlan()
	 * @generated
	 */
	EAttribute getAgeingPlan_From();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.AgeingPlan#getRemind <em>Remind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remind</em>'.
	 * @see org.flexwright.model.AgeingPlan#getRemind()
	 * @see #getAgeingPlan()
	 * @generated
	 */
	EAttribute getAgeingPlan_Remind();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.model.AgeingPlan#getPoints <em>Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Points</em>'.
	 * @see org.flexwright.model.AgeingPlan#getPoints()
	 * @see #getAgeingPlan()
	 * @generated
	 */
	EReference getAgeingPlan_Points();

	/**
	 * Returns the meta object for class '{@link org.flexwright.model.AgeingPoint <em>Ageing Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ageing Point</em>'.
	 * @see org.flexwright.model.AgeingPoint
	 * @generated
	 */
	EClass getAgeingPoint();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.AgeingPoint#getDays <em>Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Days</em>'.
	 * @see org.flexwright.model.AgeingPoint#getDays()
	 * @see #getAgeingPoint()
	 * @generated
	 */
	EAttribute getAgeingPoint_Days();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.AgeingPoint#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window</em>'.
	 * @see org.flexwright.model.AgeingPoint#getWindow()
	 * @see #getAgeingPoint()
	 * @generated
	 */
	EAttribute getAgeingPoint_Window();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.model.AgeingPoint#getSkipped <em>Skipped</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Skipped</em>'.
	 * @see org.flexwright.model.AgeingPoint#getSkipped()
	 * @see #getAgeingPoint()
	 * @generated
	 */
	EAttribute getAgeingPoint_Skipped();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.Origin <em>Origin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Origin</em>'.
	 * @see org.flexwright.model.Origin
	 * @generated
	 */
	EEnum getOrigin();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.Importance <em>Importance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Importance</em>'.
	 * @see org.flexwright.model.Importance
	 * @generated
	 */
	EEnum getImportance();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.TargetRule <em>Target Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Target Rule</em>'.
	 * @see org.flexwright.model.TargetRule
	 * @generated
	 */
	EEnum getTargetRule();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.TrialState <em>Trial State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Trial State</em>'.
	 * @see org.flexwright.model.TrialState
	 * @generated
	 */
	EEnum getTrialState();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.StepState <em>Step State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Step State</em>'.
	 * @see org.flexwright.model.StepState
	 * @generated
	 */
	EEnum getStepState();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.PieceKind <em>Piece Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Piece Kind</em>'.
	 * @see org.flexwright.model.PieceKind
	 * @generated
	 */
	EEnum getPieceKind();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.Censoring <em>Censoring</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Censoring</em>'.
	 * @see org.flexwright.model.Censoring
	 * @generated
	 */
	EEnum getCensoring();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.Knowledge <em>Knowledge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Knowledge</em>'.
	 * @see org.flexwright.model.Knowledge
	 * @generated
	 */
	EEnum getKnowledge();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.AttachmentKind <em>Attachment Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Attachment Kind</em>'.
	 * @see org.flexwright.model.AttachmentKind
	 * @generated
	 */
	EEnum getAttachmentKind();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.PartRole <em>Part Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Part Role</em>'.
	 * @see org.flexwright.model.PartRole
	 * @generated
	 */
	EEnum getPartRole();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.AmountBasis <em>Amount Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Amount Basis</em>'.
	 * @see org.flexwright.model.AmountBasis
	 * @generated
	 */
	EEnum getAmountBasis();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.PartsOf <em>Parts Of</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Parts Of</em>'.
	 * @see org.flexwright.model.PartsOf
	 * @generated
	 */
	EEnum getPartsOf();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.GateWord <em>Gate Word</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Gate Word</em>'.
	 * @see org.flexwright.model.GateWord
	 * @generated
	 */
	EEnum getGateWord();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.NoteKind <em>Note Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Note Kind</em>'.
	 * @see org.flexwright.model.NoteKind
	 * @generated
	 */
	EEnum getNoteKind();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.model.ChannelRole <em>Channel Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Channel Role</em>'.
	 * @see org.flexwright.model.ChannelRole
	 * @generated
	 */
	EEnum getChannelRole();

	/**
	 * Returns the meta object for data type '{@link java.time.Instant <em>Instant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A moment on the wall clock, UTC, ISO 8601.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Instant</em>'.
	 * @see java.time.Instant
	 * @model instanceClass="java.time.Instant"
	 * @generated
	 */
	EDataType getInstant();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Local Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A calendar day, ISO 8601.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Local Date</em>'.
	 * @see java.time.LocalDate
	 * @model instanceClass="java.time.LocalDate"
	 * @generated
	 */
	EDataType getLocalDate();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ModelFactory getModelFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.IdentifiedImpl <em>Identified</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.IdentifiedImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getIdentified()
		 * @generated
		 */
		EClass IDENTIFIED = eINSTANCE.getIdentified();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute IDENTIFIED__ID = eINSTANCE.getIdentified_Id();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.EntryImpl <em>Entry</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.EntryImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getEntry()
		 * @generated
		 */
		EClass ENTRY = eINSTANCE.getEntry();

		/**
		 * The meta object literal for the '<em><b>Provenance</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ENTRY__PROVENANCE = eINSTANCE.getEntry_Provenance();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ENTRY__NOTE = eINSTANCE.getEntry_Note();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.ProvenanceImpl <em>Provenance</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.ProvenanceImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getProvenance()
		 * @generated
		 */
		EClass PROVENANCE = eINSTANCE.getProvenance();

		/**
		 * The meta object literal for the '<em><b>Feature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__FEATURE = eINSTANCE.getProvenance_Feature();

		/**
		 * The meta object literal for the '<em><b>Origin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__ORIGIN = eINSTANCE.getProvenance_Origin();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__SOURCE = eINSTANCE.getProvenance_Source();

		/**
		 * The meta object literal for the '<em><b>Uncertainty</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__UNCERTAINTY = eINSTANCE.getProvenance_Uncertainty();

		/**
		 * The meta object literal for the '<em><b>Typed As</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__TYPED_AS = eINSTANCE.getProvenance_TypedAs();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__BY = eINSTANCE.getProvenance_By();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVENANCE__AT = eINSTANCE.getProvenance_At();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.ProjectImpl <em>Project</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.ProjectImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getProject()
		 * @generated
		 */
		EClass PROJECT = eINSTANCE.getProject();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__TITLE = eINSTANCE.getProject_Title();

		/**
		 * The meta object literal for the '<em><b>Job</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__JOB = eINSTANCE.getProject_Job();

		/**
		 * The meta object literal for the '<em><b>Invented</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__INVENTED = eINSTANCE.getProject_Invented();

		/**
		 * The meta object literal for the '<em><b>Created At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__CREATED_AT = eINSTANCE.getProject_CreatedAt();

		/**
		 * The meta object literal for the '<em><b>Written By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__WRITTEN_BY = eINSTANCE.getProject_WrittenBy();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__FORMAT_VERSION = eINSTANCE.getProject_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Journal Seq</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__JOURNAL_SEQ = eINSTANCE.getProject_JournalSeq();

		/**
		 * The meta object literal for the '<em><b>Needs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__NEEDS = eINSTANCE.getProject_Needs();

		/**
		 * The meta object literal for the '<em><b>Reference Parts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__REFERENCE_PARTS = eINSTANCE.getProject_ReferenceParts();

		/**
		 * The meta object literal for the '<em><b>Target Sheets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__TARGET_SHEETS = eINSTANCE.getProject_TargetSheets();

		/**
		 * The meta object literal for the '<em><b>Grades</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__GRADES = eINSTANCE.getProject_Grades();

		/**
		 * The meta object literal for the '<em><b>Instruments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__INSTRUMENTS = eINSTANCE.getProject_Instruments();

		/**
		 * The meta object literal for the '<em><b>Control Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__CONTROL_PIECES = eINSTANCE.getProject_ControlPieces();

		/**
		 * The meta object literal for the '<em><b>Sessions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__SESSIONS = eINSTANCE.getProject_Sessions();

		/**
		 * The meta object literal for the '<em><b>Trials</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__TRIALS = eINSTANCE.getProject_Trials();

		/**
		 * The meta object literal for the '<em><b>Recipes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__RECIPES = eINSTANCE.getProject_Recipes();

		/**
		 * The meta object literal for the '<em><b>Attachments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__ATTACHMENTS = eINSTANCE.getProject_Attachments();

		/**
		 * The meta object literal for the '<em><b>Acknowledgements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__ACKNOWLEDGEMENTS = eINSTANCE.getProject_Acknowledgements();

		/**
		 * The meta object literal for the '<em><b>Overrides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__OVERRIDES = eINSTANCE.getProject_Overrides();

		/**
		 * The meta object literal for the '<em><b>Plugins</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__PLUGINS = eINSTANCE.getProject_Plugins();

		/**
		 * The meta object literal for the '<em><b>Moulds</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__MOULDS = eINSTANCE.getProject_Moulds();

		/**
		 * The meta object literal for the '<em><b>Premixes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__PREMIXES = eINSTANCE.getProject_Premixes();

		/**
		 * The meta object literal for the '<em><b>Batches</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__BATCHES = eINSTANCE.getProject_Batches();

		/**
		 * The meta object literal for the '<em><b>Searches</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__SEARCHES = eINSTANCE.getProject_Searches();

		/**
		 * The meta object literal for the '<em><b>Hourly Rate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__HOURLY_RATE = eINSTANCE.getProject_HourlyRate();

		/**
		 * The meta object literal for the '<em><b>Cup Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__CUP_PRICE = eINSTANCE.getProject_CupPrice();

		/**
		 * The meta object literal for the '<em><b>Gauge Studies</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__GAUGE_STUDIES = eINSTANCE.getProject_GaugeStudies();

		/**
		 * The meta object literal for the '<em><b>Spot Maps</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__SPOT_MAPS = eINSTANCE.getProject_SpotMaps();

		/**
		 * The meta object literal for the '<em><b>Law Fits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__LAW_FITS = eINSTANCE.getProject_LawFits();

		/**
		 * The meta object literal for the '<em><b>Rankings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__RANKINGS = eINSTANCE.getProject_Rankings();

		/**
		 * The meta object literal for the '<em><b>Ageing Plans</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__AGEING_PLANS = eINSTANCE.getProject_AgeingPlans();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.PluginUseImpl <em>Plugin Use</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.PluginUseImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPluginUse()
		 * @generated
		 */
		EClass PLUGIN_USE = eINSTANCE.getPluginUse();

		/**
		 * The meta object literal for the '<em><b>Ns URI</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLUGIN_USE__NS_URI = eINSTANCE.getPluginUse_NsURI();

		/**
		 * The meta object literal for the '<em><b>Plugin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLUGIN_USE__PLUGIN = eINSTANCE.getPluginUse_Plugin();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLUGIN_USE__VERSION = eINSTANCE.getPluginUse_Version();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.NeedImpl <em>Need</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.NeedImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getNeed()
		 * @generated
		 */
		EClass NEED = eINSTANCE.getNeed();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NEED__TEXT = eINSTANCE.getNeed_Text();

		/**
		 * The meta object literal for the '<em><b>Importance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NEED__IMPORTANCE = eINSTANCE.getNeed_Importance();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.PropertyKeyImpl <em>Property Key</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.PropertyKeyImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPropertyKey()
		 * @generated
		 */
		EClass PROPERTY_KEY = eINSTANCE.getPropertyKey();

		/**
		 * The meta object literal for the '<em><b>Property</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPERTY_KEY__PROPERTY = eINSTANCE.getPropertyKey_Property();

		/**
		 * The meta object literal for the '<em><b>Piece Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPERTY_KEY__PIECE_KIND = eINSTANCE.getPropertyKey_PieceKind();

		/**
		 * The meta object literal for the '<em><b>Spot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPERTY_KEY__SPOT = eINSTANCE.getPropertyKey_Spot();

		/**
		 * The meta object literal for the '<em><b>Support</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPERTY_KEY__SUPPORT = eINSTANCE.getPropertyKey_Support();

		/**
		 * The meta object literal for the '<em><b>Dwell</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPERTY_KEY__DWELL = eINSTANCE.getPropertyKey_Dwell();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.TargetSheetImpl <em>Target Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.TargetSheetImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getTargetSheet()
		 * @generated
		 */
		EClass TARGET_SHEET = eINSTANCE.getTargetSheet();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET_SHEET__VERSION = eINSTANCE.getTargetSheet_Version();

		/**
		 * The meta object literal for the '<em><b>Frozen At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET_SHEET__FROZEN_AT = eINSTANCE.getTargetSheet_FrozenAt();

		/**
		 * The meta object literal for the '<em><b>Frozen By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET_SHEET__FROZEN_BY = eINSTANCE.getTargetSheet_FrozenBy();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET_SHEET__REASON = eINSTANCE.getTargetSheet_Reason();

		/**
		 * The meta object literal for the '<em><b>Targets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TARGET_SHEET__TARGETS = eINSTANCE.getTargetSheet_Targets();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.TargetImpl <em>Target</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.TargetImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getTarget()
		 * @generated
		 */
		EClass TARGET = eINSTANCE.getTarget();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TARGET__KEY = eINSTANCE.getTarget_Key();

		/**
		 * The meta object literal for the '<em><b>Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__RULE = eINSTANCE.getTarget_Rule();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__LOW = eINSTANCE.getTarget_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__HIGH = eINSTANCE.getTarget_High();

		/**
		 * The meta object literal for the '<em><b>Nominal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__NOMINAL = eINSTANCE.getTarget_Nominal();

		/**
		 * The meta object literal for the '<em><b>Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__TOLERANCE = eINSTANCE.getTarget_Tolerance();

		/**
		 * The meta object literal for the '<em><b>Weight</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__WEIGHT = eINSTANCE.getTarget_Weight();

		/**
		 * The meta object literal for the '<em><b>Reject Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__REJECT_BELOW = eINSTANCE.getTarget_RejectBelow();

		/**
		 * The meta object literal for the '<em><b>Reject Above</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__REJECT_ABOVE = eINSTANCE.getTarget_RejectAbove();

		/**
		 * The meta object literal for the '<em><b>Allowed Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__ALLOWED_SHARE = eINSTANCE.getTarget_AllowedShare();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.MaterialGradeImpl <em>Material Grade</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.MaterialGradeImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getMaterialGrade()
		 * @generated
		 */
		EClass MATERIAL_GRADE = eINSTANCE.getMaterialGrade();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_GRADE__CODE = eINSTANCE.getMaterialGrade_Code();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_GRADE__NAME = eINSTANCE.getMaterialGrade_Name();

		/**
		 * The meta object literal for the '<em><b>Family</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_GRADE__FAMILY = eINSTANCE.getMaterialGrade_Family();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_GRADE__ROLE = eINSTANCE.getMaterialGrade_Role();

		/**
		 * The meta object literal for the '<em><b>Hazards</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_GRADE__HAZARDS = eINSTANCE.getMaterialGrade_Hazards();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIAL_GRADE__VALUES = eINSTANCE.getMaterialGrade_Values();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIAL_GRADE__LOTS = eINSTANCE.getMaterialGrade_Lots();

		/**
		 * The meta object literal for the '<em><b>Pack Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_GRADE__PACK_SIZE = eINSTANCE.getMaterialGrade_PackSize();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.MaterialValueImpl <em>Material Value</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.MaterialValueImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getMaterialValue()
		 * @generated
		 */
		EClass MATERIAL_VALUE = eINSTANCE.getMaterialValue();

		/**
		 * The meta object literal for the '<em><b>Property</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__PROPERTY = eINSTANCE.getMaterialValue_Property();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__UNIT = eINSTANCE.getMaterialValue_Unit();

		/**
		 * The meta object literal for the '<em><b>Sheet Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__SHEET_VALUE = eINSTANCE.getMaterialValue_SheetValue();

		/**
		 * The meta object literal for the '<em><b>Sheet Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__SHEET_SOURCE = eINSTANCE.getMaterialValue_SheetSource();

		/**
		 * The meta object literal for the '<em><b>Own Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__OWN_VALUE = eINSTANCE.getMaterialValue_OwnValue();

		/**
		 * The meta object literal for the '<em><b>Own Uncertainty</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__OWN_UNCERTAINTY = eINSTANCE.getMaterialValue_OwnUncertainty();

		/**
		 * The meta object literal for the '<em><b>Own Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_VALUE__OWN_SOURCE = eINSTANCE.getMaterialValue_OwnSource();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.LotImpl <em>Lot</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.LotImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getLot()
		 * @generated
		 */
		EClass LOT = eINSTANCE.getLot();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__CODE = eINSTANCE.getLot_Code();

		/**
		 * The meta object literal for the '<em><b>Opened</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__OPENED = eINSTANCE.getLot_Opened();

		/**
		 * The meta object literal for the '<em><b>Expires</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__EXPIRES = eINSTANCE.getLot_Expires();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__PRICE = eINSTANCE.getLot_Price();

		/**
		 * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__AMOUNT = eINSTANCE.getLot_Amount();

		/**
		 * The meta object literal for the '<em><b>Sheet Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__SHEET_DATE = eINSTANCE.getLot_SheetDate();

		/**
		 * The meta object literal for the '<em><b>Sheet Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__SHEET_REVISION = eINSTANCE.getLot_SheetRevision();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOT__VALUES = eINSTANCE.getLot_Values();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.InstrumentImpl <em>Instrument</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.InstrumentImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getInstrument()
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
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__KIND = eINSTANCE.getInstrument_Kind();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__UNIT = eINSTANCE.getInstrument_Unit();

		/**
		 * The meta object literal for the '<em><b>Resolution</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__RESOLUTION = eINSTANCE.getInstrument_Resolution();

		/**
		 * The meta object literal for the '<em><b>Accuracy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__ACCURACY = eINSTANCE.getInstrument_Accuracy();

		/**
		 * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__SCALE = eINSTANCE.getInstrument_Scale();

		/**
		 * The meta object literal for the '<em><b>Spread</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__SPREAD = eINSTANCE.getInstrument_Spread();

		/**
		 * The meta object literal for the '<em><b>Spread From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__SPREAD_FROM = eINSTANCE.getInstrument_SpreadFrom();

		/**
		 * The meta object literal for the '<em><b>Checked On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__CHECKED_ON = eINSTANCE.getInstrument_CheckedOn();

		/**
		 * The meta object literal for the '<em><b>Check Every Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__CHECK_EVERY_DAYS = eINSTANCE.getInstrument_CheckEveryDays();

		/**
		 * The meta object literal for the '<em><b>Check Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSTRUMENT__CHECK_NOTE = eINSTANCE.getInstrument_CheckNote();

		/**
		 * The meta object literal for the '<em><b>Study</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference INSTRUMENT__STUDY = eINSTANCE.getInstrument_Study();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.SessionImpl <em>Session</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.SessionImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getSession()
		 * @generated
		 */
		EClass SESSION = eINSTANCE.getSession();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__CODE = eINSTANCE.getSession_Code();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__AT = eINSTANCE.getSession_At();

		/**
		 * The meta object literal for the '<em><b>Room C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__ROOM_C = eINSTANCE.getSession_RoomC();

		/**
		 * The meta object literal for the '<em><b>Room Rh</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__ROOM_RH = eINSTANCE.getSession_RoomRh();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__WHO = eINSTANCE.getSession_Who();

		/**
		 * The meta object literal for the '<em><b>Instruments</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SESSION__INSTRUMENTS = eINSTANCE.getSession_Instruments();

		/**
		 * The meta object literal for the '<em><b>Control Piece</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SESSION__CONTROL_PIECE = eINSTANCE.getSession_ControlPiece();

		/**
		 * The meta object literal for the '<em><b>Conditioning Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__CONDITIONING_HOURS = eINSTANCE.getSession_ConditioningHours();

		/**
		 * The meta object literal for the '<em><b>Room</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SESSION__ROOM = eINSTANCE.getSession_Room();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.SpecimenImpl <em>Specimen</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.SpecimenImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getSpecimen()
		 * @generated
		 */
		EClass SPECIMEN = eINSTANCE.getSpecimen();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__CODE = eINSTANCE.getSpecimen_Code();

		/**
		 * The meta object literal for the '<em><b>Piece Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__PIECE_KIND = eINSTANCE.getSpecimen_PieceKind();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__THICKNESS = eINSTANCE.getSpecimen_Thickness();

		/**
		 * The meta object literal for the '<em><b>Made At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__MADE_AT = eINSTANCE.getSpecimen_MadeAt();

		/**
		 * The meta object literal for the '<em><b>Failed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__FAILED = eINSTANCE.getSpecimen_Failed();

		/**
		 * The meta object literal for the '<em><b>Fail Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__FAIL_REASON = eINSTANCE.getSpecimen_FailReason();

		/**
		 * The meta object literal for the '<em><b>Measurements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPECIMEN__MEASUREMENTS = eINSTANCE.getSpecimen_Measurements();

		/**
		 * The meta object literal for the '<em><b>Recordings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPECIMEN__RECORDINGS = eINSTANCE.getSpecimen_Recordings();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.ControlPieceImpl <em>Control Piece</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.ControlPieceImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getControlPiece()
		 * @generated
		 */
		EClass CONTROL_PIECE = eINSTANCE.getControlPiece();

		/**
		 * The meta object literal for the '<em><b>Usual</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONTROL_PIECE__USUAL = eINSTANCE.getControlPiece_Usual();

		/**
		 * The meta object literal for the '<em><b>Usual Spread</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONTROL_PIECE__USUAL_SPREAD = eINSTANCE.getControlPiece_UsualSpread();

		/**
		 * The meta object literal for the '<em><b>Usual From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONTROL_PIECE__USUAL_FROM = eINSTANCE.getControlPiece_UsualFrom();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.ReferencePartImpl <em>Reference Part</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.ReferencePartImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getReferencePart()
		 * @generated
		 */
		EClass REFERENCE_PART = eINSTANCE.getReferencePart();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REFERENCE_PART__NAME = eINSTANCE.getReferencePart_Name();

		/**
		 * The meta object literal for the '<em><b>Condition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REFERENCE_PART__CONDITION = eINSTANCE.getReferencePart_Condition();

		/**
		 * The meta object literal for the '<em><b>Age Years</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REFERENCE_PART__AGE_YEARS = eINSTANCE.getReferencePart_AgeYears();

		/**
		 * The meta object literal for the '<em><b>Photos</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference REFERENCE_PART__PHOTOS = eINSTANCE.getReferencePart_Photos();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.PartImpl <em>Part</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.PartImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPart()
		 * @generated
		 */
		EClass PART = eINSTANCE.getPart();

		/**
		 * The meta object literal for the '<em><b>Photos</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PART__PHOTOS = eINSTANCE.getPart_Photos();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.MeasurementImpl <em>Measurement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.MeasurementImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getMeasurement()
		 * @generated
		 */
		EClass MEASUREMENT = eINSTANCE.getMeasurement();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__KIND = eINSTANCE.getMeasurement_Kind();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__KEY = eINSTANCE.getMeasurement_Key();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__AT = eINSTANCE.getMeasurement_At();

		/**
		 * The meta object literal for the '<em><b>Delay Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__DELAY_HOURS = eINSTANCE.getMeasurement_DelayHours();

		/**
		 * The meta object literal for the '<em><b>Piece C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__PIECE_C = eINSTANCE.getMeasurement_PieceC();

		/**
		 * The meta object literal for the '<em><b>Knowledge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__KNOWLEDGE = eINSTANCE.getMeasurement_Knowledge();

		/**
		 * The meta object literal for the '<em><b>Session</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__SESSION = eINSTANCE.getMeasurement_Session();

		/**
		 * The meta object literal for the '<em><b>Instrument</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__INSTRUMENT = eINSTANCE.getMeasurement_Instrument();

		/**
		 * The meta object literal for the '<em><b>Readings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__READINGS = eINSTANCE.getMeasurement_Readings();

		/**
		 * The meta object literal for the '<em><b>Details</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__DETAILS = eINSTANCE.getMeasurement_Details();

		/**
		 * The meta object literal for the '<em><b>Recording</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__RECORDING = eINSTANCE.getMeasurement_Recording();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.ReadingImpl <em>Reading</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.ReadingImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getReading()
		 * @generated
		 */
		EClass READING = eINSTANCE.getReading();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VALUE = eINSTANCE.getReading_Value();

		/**
		 * The meta object literal for the '<em><b>Censoring</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CENSORING = eINSTANCE.getReading_Censoring();

		/**
		 * The meta object literal for the '<em><b>Yes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__YES = eINSTANCE.getReading_Yes();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__AT = eINSTANCE.getReading_At();

		/**
		 * The meta object literal for the '<em><b>Typed As</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__TYPED_AS = eINSTANCE.getReading_TypedAs();

		/**
		 * The meta object literal for the '<em><b>Left Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__LEFT_OUT = eINSTANCE.getReading_LeftOut();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.TrialImpl <em>Trial</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.TrialImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getTrial()
		 * @generated
		 */
		EClass TRIAL = eINSTANCE.getTrial();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CODE = eINSTANCE.getTrial_Code();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__TITLE = eINSTANCE.getTrial_Title();

		/**
		 * The meta object literal for the '<em><b>Idea</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__IDEA = eINSTANCE.getTrial_Idea();

		/**
		 * The meta object literal for the '<em><b>Route</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__ROUTE = eINSTANCE.getTrial_Route();

		/**
		 * The meta object literal for the '<em><b>Based On</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__BASED_ON = eINSTANCE.getTrial_BasedOn();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__STATE = eINSTANCE.getTrial_State();

		/**
		 * The meta object literal for the '<em><b>State Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__STATE_REASON = eINSTANCE.getTrial_StateReason();

		/**
		 * The meta object literal for the '<em><b>Created At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CREATED_AT = eINSTANCE.getTrial_CreatedAt();

		/**
		 * The meta object literal for the '<em><b>Made At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__MADE_AT = eINSTANCE.getTrial_MadeAt();

		/**
		 * The meta object literal for the '<em><b>Conclusion</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CONCLUSION = eINSTANCE.getTrial_Conclusion();

		/**
		 * The meta object literal for the '<em><b>Cost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__COST = eINSTANCE.getTrial_Cost();

		/**
		 * The meta object literal for the '<em><b>Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__HOURS = eINSTANCE.getTrial_Hours();

		/**
		 * The meta object literal for the '<em><b>Steps</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__STEPS = eINSTANCE.getTrial_Steps();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__PARTS = eINSTANCE.getTrial_Parts();

		/**
		 * The meta object literal for the '<em><b>Calculations</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__CALCULATIONS = eINSTANCE.getTrial_Calculations();

		/**
		 * The meta object literal for the '<em><b>Attachments</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__ATTACHMENTS = eINSTANCE.getTrial_Attachments();

		/**
		 * The meta object literal for the '<em><b>Contact At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CONTACT_AT = eINSTANCE.getTrial_ContactAt();

		/**
		 * The meta object literal for the '<em><b>Cup Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CUP_LABEL = eINSTANCE.getTrial_CupLabel();

		/**
		 * The meta object literal for the '<em><b>Mould</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__MOULD = eINSTANCE.getTrial_Mould();

		/**
		 * The meta object literal for the '<em><b>Notes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__NOTES = eINSTANCE.getTrial_Notes();

		/**
		 * The meta object literal for the '<em><b>Decisions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__DECISIONS = eINSTANCE.getTrial_Decisions();

		/**
		 * The meta object literal for the '<em><b>Parts Wanted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__PARTS_WANTED = eINSTANCE.getTrial_PartsWanted();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.StepImpl <em>Step</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.StepImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getStep()
		 * @generated
		 */
		EClass STEP = eINSTANCE.getStep();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__KIND = eINSTANCE.getStep_Kind();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__TITLE = eINSTANCE.getStep_Title();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__STATE = eINSTANCE.getStep_State();

		/**
		 * The meta object literal for the '<em><b>Unconfirmed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__UNCONFIRMED = eINSTANCE.getStep_Unconfirmed();

		/**
		 * The meta object literal for the '<em><b>Confirmed By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__CONFIRMED_BY = eINSTANCE.getStep_ConfirmedBy();

		/**
		 * The meta object literal for the '<em><b>Confirmed At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__CONFIRMED_AT = eINSTANCE.getStep_ConfirmedAt();

		/**
		 * The meta object literal for the '<em><b>Planned Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__PLANNED_START = eINSTANCE.getStep_PlannedStart();

		/**
		 * The meta object literal for the '<em><b>Planned Duration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__PLANNED_DURATION = eINSTANCE.getStep_PlannedDuration();

		/**
		 * The meta object literal for the '<em><b>Started At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__STARTED_AT = eINSTANCE.getStep_StartedAt();

		/**
		 * The meta object literal for the '<em><b>Ended At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STEP__ENDED_AT = eINSTANCE.getStep_EndedAt();

		/**
		 * The meta object literal for the '<em><b>Session</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STEP__SESSION = eINSTANCE.getStep_Session();

		/**
		 * The meta object literal for the '<em><b>Uses</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STEP__USES = eINSTANCE.getStep_Uses();

		/**
		 * The meta object literal for the '<em><b>Details</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STEP__DETAILS = eINSTANCE.getStep_Details();

		/**
		 * The meta object literal for the '<em><b>Attachments</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STEP__ATTACHMENTS = eINSTANCE.getStep_Attachments();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.MaterialUseImpl <em>Material Use</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.MaterialUseImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getMaterialUse()
		 * @generated
		 */
		EClass MATERIAL_USE = eINSTANCE.getMaterialUse();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__ROLE = eINSTANCE.getMaterialUse_Role();

		/**
		 * The meta object literal for the '<em><b>Grade</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIAL_USE__GRADE = eINSTANCE.getMaterialUse_Grade();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIAL_USE__LOT = eINSTANCE.getMaterialUse_Lot();

		/**
		 * The meta object literal for the '<em><b>Planned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__PLANNED = eINSTANCE.getMaterialUse_Planned();

		/**
		 * The meta object literal for the '<em><b>Weighings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIAL_USE__WEIGHINGS = eINSTANCE.getMaterialUse_Weighings();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__PARTS = eINSTANCE.getMaterialUse_Parts();

		/**
		 * The meta object literal for the '<em><b>Parts By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__PARTS_BY = eINSTANCE.getMaterialUse_PartsBy();

		/**
		 * The meta object literal for the '<em><b>Parts Of</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__PARTS_OF = eINSTANCE.getMaterialUse_PartsOf();

		/**
		 * The meta object literal for the '<em><b>Moisture</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__MOISTURE = eINSTANCE.getMaterialUse_Moisture();

		/**
		 * The meta object literal for the '<em><b>Dried</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL_USE__DRIED = eINSTANCE.getMaterialUse_Dried();

		/**
		 * The meta object literal for the '<em><b>Premix</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MATERIAL_USE__PREMIX = eINSTANCE.getMaterialUse_Premix();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.WeighingImpl <em>Weighing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.WeighingImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getWeighing()
		 * @generated
		 */
		EClass WEIGHING = eINSTANCE.getWeighing();

		/**
		 * The meta object literal for the '<em><b>Gross</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__GROSS = eINSTANCE.getWeighing_Gross();

		/**
		 * The meta object literal for the '<em><b>Tare</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__TARE = eINSTANCE.getWeighing_Tare();

		/**
		 * The meta object literal for the '<em><b>Net</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__NET = eINSTANCE.getWeighing_Net();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__AT = eINSTANCE.getWeighing_At();

		/**
		 * The meta object literal for the '<em><b>Correction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGHING__CORRECTION = eINSTANCE.getWeighing_Correction();

		/**
		 * The meta object literal for the '<em><b>Instrument</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WEIGHING__INSTRUMENT = eINSTANCE.getWeighing_Instrument();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.AttachmentImpl <em>Attachment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.AttachmentImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getAttachment()
		 * @generated
		 */
		EClass ATTACHMENT = eINSTANCE.getAttachment();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ATTACHMENT__KIND = eINSTANCE.getAttachment_Kind();

		/**
		 * The meta object literal for the '<em><b>File Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ATTACHMENT__FILE_NAME = eINSTANCE.getAttachment_FileName();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ATTACHMENT__PATH = eINSTANCE.getAttachment_Path();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ATTACHMENT__SHA256 = eINSTANCE.getAttachment_Sha256();

		/**
		 * The meta object literal for the '<em><b>Caption</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ATTACHMENT__CAPTION = eINSTANCE.getAttachment_Caption();

		/**
		 * The meta object literal for the '<em><b>Added At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ATTACHMENT__ADDED_AT = eINSTANCE.getAttachment_AddedAt();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RecipeImpl <em>Recipe</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RecipeImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRecipe()
		 * @generated
		 */
		EClass RECIPE = eINSTANCE.getRecipe();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__CODE = eINSTANCE.getRecipe_Code();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__VERSION = eINSTANCE.getRecipe_Version();

		/**
		 * The meta object literal for the '<em><b>Frozen At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__FROZEN_AT = eINSTANCE.getRecipe_FrozenAt();

		/**
		 * The meta object literal for the '<em><b>Frozen By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__FROZEN_BY = eINSTANCE.getRecipe_FrozenBy();

		/**
		 * The meta object literal for the '<em><b>Limits</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__LIMITS = eINSTANCE.getRecipe_Limits();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__FROM = eINSTANCE.getRecipe_From();

		/**
		 * The meta object literal for the '<em><b>Plan</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__PLAN = eINSTANCE.getRecipe_Plan();

		/**
		 * The meta object literal for the '<em><b>Materials</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__MATERIALS = eINSTANCE.getRecipe_Materials();

		/**
		 * The meta object literal for the '<em><b>As Made</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__AS_MADE = eINSTANCE.getRecipe_AsMade();

		/**
		 * The meta object literal for the '<em><b>Targets</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__TARGETS = eINSTANCE.getRecipe_Targets();

		/**
		 * The meta object literal for the '<em><b>Changes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__CHANGES = eINSTANCE.getRecipe_Changes();

		/**
		 * The meta object literal for the '<em><b>Sessions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__SESSIONS = eINSTANCE.getRecipe_Sessions();

		/**
		 * The meta object literal for the '<em><b>Instruments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__INSTRUMENTS = eINSTANCE.getRecipe_Instruments();

		/**
		 * The meta object literal for the '<em><b>Premixes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__PREMIXES = eINSTANCE.getRecipe_Premixes();

		/**
		 * The meta object literal for the '<em><b>Attachments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__ATTACHMENTS = eINSTANCE.getRecipe_Attachments();

		/**
		 * The meta object literal for the '<em><b>Mould</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__MOULD = eINSTANCE.getRecipe_Mould();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__TITLE = eINSTANCE.getRecipe_Title();

		/**
		 * The meta object literal for the '<em><b>Job</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__JOB = eINSTANCE.getRecipe_Job();

		/**
		 * The meta object literal for the '<em><b>Invented</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECIPE__INVENTED = eINSTANCE.getRecipe_Invented();

		/**
		 * The meta object literal for the '<em><b>Needs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__NEEDS = eINSTANCE.getRecipe_Needs();

		/**
		 * The meta object literal for the '<em><b>References</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__REFERENCES = eINSTANCE.getRecipe_References();

		/**
		 * The meta object literal for the '<em><b>Overrides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__OVERRIDES = eINSTANCE.getRecipe_Overrides();

		/**
		 * The meta object literal for the '<em><b>Acknowledgements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECIPE__ACKNOWLEDGEMENTS = eINSTANCE.getRecipe_Acknowledgements();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.AcknowledgementImpl <em>Acknowledgement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.AcknowledgementImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getAcknowledgement()
		 * @generated
		 */
		EClass ACKNOWLEDGEMENT = eINSTANCE.getAcknowledgement();

		/**
		 * The meta object literal for the '<em><b>Prompt</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACKNOWLEDGEMENT__PROMPT = eINSTANCE.getAcknowledgement_Prompt();

		/**
		 * The meta object literal for the '<em><b>Session</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACKNOWLEDGEMENT__SESSION = eINSTANCE.getAcknowledgement_Session();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACKNOWLEDGEMENT__LOT = eINSTANCE.getAcknowledgement_Lot();

		/**
		 * The meta object literal for the '<em><b>Step</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACKNOWLEDGEMENT__STEP = eINSTANCE.getAcknowledgement_Step();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACKNOWLEDGEMENT__WHO = eINSTANCE.getAcknowledgement_Who();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACKNOWLEDGEMENT__AT = eINSTANCE.getAcknowledgement_At();

		/**
		 * The meta object literal for the '<em><b>Sheet Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACKNOWLEDGEMENT__SHEET_DATE = eINSTANCE.getAcknowledgement_SheetDate();

		/**
		 * The meta object literal for the '<em><b>Sheet Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACKNOWLEDGEMENT__SHEET_REVISION = eINSTANCE.getAcknowledgement_SheetRevision();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.StopOverrideImpl <em>Stop Override</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.StopOverrideImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getStopOverride()
		 * @generated
		 */
		EClass STOP_OVERRIDE = eINSTANCE.getStopOverride();

		/**
		 * The meta object literal for the '<em><b>Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_OVERRIDE__RULE = eINSTANCE.getStopOverride_Rule();

		/**
		 * The meta object literal for the '<em><b>Subject</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_OVERRIDE__SUBJECT = eINSTANCE.getStopOverride_Subject();

		/**
		 * The meta object literal for the '<em><b>Input Hash</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_OVERRIDE__INPUT_HASH = eINSTANCE.getStopOverride_InputHash();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_OVERRIDE__REASON = eINSTANCE.getStopOverride_Reason();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_OVERRIDE__WHO = eINSTANCE.getStopOverride_Who();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_OVERRIDE__AT = eINSTANCE.getStopOverride_At();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.CalculationRunImpl <em>Calculation Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.CalculationRunImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getCalculationRun()
		 * @generated
		 */
		EClass CALCULATION_RUN = eINSTANCE.getCalculationRun();

		/**
		 * The meta object literal for the '<em><b>Calculation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALCULATION_RUN__CALCULATION = eINSTANCE.getCalculationRun_Calculation();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALCULATION_RUN__VERSION = eINSTANCE.getCalculationRun_Version();

		/**
		 * The meta object literal for the '<em><b>Program Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALCULATION_RUN__PROGRAM_VERSION = eINSTANCE.getCalculationRun_ProgramVersion();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALCULATION_RUN__AT = eINSTANCE.getCalculationRun_At();

		/**
		 * The meta object literal for the '<em><b>Inputs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CALCULATION_RUN__INPUTS = eINSTANCE.getCalculationRun_Inputs();

		/**
		 * The meta object literal for the '<em><b>Results</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CALCULATION_RUN__RESULTS = eINSTANCE.getCalculationRun_Results();

		/**
		 * The meta object literal for the '<em><b>Refusal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALCULATION_RUN__REFUSAL = eINSTANCE.getCalculationRun_Refusal();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RunInputImpl <em>Run Input</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RunInputImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRunInput()
		 * @generated
		 */
		EClass RUN_INPUT = eINSTANCE.getRunInput();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_INPUT__NAME = eINSTANCE.getRunInput_Name();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_INPUT__VALUE = eINSTANCE.getRunInput_Value();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_INPUT__TEXT = eINSTANCE.getRunInput_Text();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_INPUT__UNIT = eINSTANCE.getRunInput_Unit();

		/**
		 * The meta object literal for the '<em><b>Origin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_INPUT__ORIGIN = eINSTANCE.getRunInput_Origin();

		/**
		 * The meta object literal for the '<em><b>Bound To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_INPUT__BOUND_TO = eINSTANCE.getRunInput_BoundTo();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RunResultImpl <em>Run Result</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RunResultImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRunResult()
		 * @generated
		 */
		EClass RUN_RESULT = eINSTANCE.getRunResult();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__NAME = eINSTANCE.getRunResult_Name();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__LOW = eINSTANCE.getRunResult_Low();

		/**
		 * The meta object literal for the '<em><b>Likely</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__LIKELY = eINSTANCE.getRunResult_Likely();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__HIGH = eINSTANCE.getRunResult_High();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__TEXT = eINSTANCE.getRunResult_Text();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__UNIT = eINSTANCE.getRunResult_Unit();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_RESULT__SOURCE = eINSTANCE.getRunResult_Source();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.BenchNoteImpl <em>Bench Note</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.BenchNoteImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getBenchNote()
		 * @generated
		 */
		EClass BENCH_NOTE = eINSTANCE.getBenchNote();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_NOTE__KIND = eINSTANCE.getBenchNote_Kind();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_NOTE__AT = eINSTANCE.getBenchNote_At();

		/**
		 * The meta object literal for the '<em><b>Step</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BENCH_NOTE__STEP = eINSTANCE.getBenchNote_Step();

		/**
		 * The meta object literal for the '<em><b>Attachment</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BENCH_NOTE__ATTACHMENT = eINSTANCE.getBenchNote_Attachment();

		/**
		 * The meta object literal for the '<em><b>Sorted At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_NOTE__SORTED_AT = eINSTANCE.getBenchNote_SortedAt();

		/**
		 * The meta object literal for the '<em><b>Sorted As</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_NOTE__SORTED_AS = eINSTANCE.getBenchNote_SortedAs();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.DecisionImpl <em>Decision</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.DecisionImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getDecision()
		 * @generated
		 */
		EClass DECISION = eINSTANCE.getDecision();

		/**
		 * The meta object literal for the '<em><b>Word</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DECISION__WORD = eINSTANCE.getDecision_Word();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DECISION__AT = eINSTANCE.getDecision_At();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DECISION__WHO = eINSTANCE.getDecision_Who();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DECISION__REASON = eINSTANCE.getDecision_Reason();

		/**
		 * The meta object literal for the '<em><b>Open</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DECISION__OPEN = eINSTANCE.getDecision_Open();

		/**
		 * The meta object literal for the '<em><b>Step</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DECISION__STEP = eINSTANCE.getDecision_Step();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.MouldImpl <em>Mould</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.MouldImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getMould()
		 * @generated
		 */
		EClass MOULD = eINSTANCE.getMould();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__CODE = eINSTANCE.getMould_Code();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__NAME = eINSTANCE.getMould_Name();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__MATERIAL = eINSTANCE.getMould_Material();

		/**
		 * The meta object literal for the '<em><b>Made On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__MADE_ON = eINSTANCE.getMould_MadeOn();

		/**
		 * The meta object literal for the '<em><b>Cavities</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__CAVITIES = eINSTANCE.getMould_Cavities();

		/**
		 * The meta object literal for the '<em><b>Casts Before</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__CASTS_BEFORE = eINSTANCE.getMould_CastsBefore();

		/**
		 * The meta object literal for the '<em><b>Casts Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__CASTS_LIMIT = eINSTANCE.getMould_CastsLimit();

		/**
		 * The meta object literal for the '<em><b>Turn Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__TURN_MINUTES = eINSTANCE.getMould_TurnMinutes();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD__PRICE = eINSTANCE.getMould_Price();

		/**
		 * The meta object literal for the '<em><b>Casts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOULD__CASTS = eINSTANCE.getMould_Casts();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.MouldCastImpl <em>Mould Cast</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.MouldCastImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getMouldCast()
		 * @generated
		 */
		EClass MOULD_CAST = eINSTANCE.getMouldCast();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD_CAST__AT = eINSTANCE.getMouldCast_At();

		/**
		 * The meta object literal for the '<em><b>Trial</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOULD_CAST__TRIAL = eINSTANCE.getMouldCast_Trial();

		/**
		 * The meta object literal for the '<em><b>Release</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD_CAST__RELEASE = eINSTANCE.getMouldCast_Release();

		/**
		 * The meta object literal for the '<em><b>Released Well</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD_CAST__RELEASED_WELL = eINSTANCE.getMouldCast_ReleasedWell();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOULD_CAST__PARTS = eINSTANCE.getMouldCast_Parts();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.PremixImpl <em>Premix</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.PremixImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPremix()
		 * @generated
		 */
		EClass PREMIX = eINSTANCE.getPremix();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREMIX__CODE = eINSTANCE.getPremix_Code();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREMIX__TITLE = eINSTANCE.getPremix_Title();

		/**
		 * The meta object literal for the '<em><b>Made At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREMIX__MADE_AT = eINSTANCE.getPremix_MadeAt();

		/**
		 * The meta object literal for the '<em><b>Rested Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREMIX__RESTED_HOURS = eINSTANCE.getPremix_RestedHours();

		/**
		 * The meta object literal for the '<em><b>Dried C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREMIX__DRIED_C = eINSTANCE.getPremix_DriedC();

		/**
		 * The meta object literal for the '<em><b>Dried Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREMIX__DRIED_HOURS = eINSTANCE.getPremix_DriedHours();

		/**
		 * The meta object literal for the '<em><b>Ingredients</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PREMIX__INGREDIENTS = eINSTANCE.getPremix_Ingredients();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.BatchImpl <em>Batch</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.BatchImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getBatch()
		 * @generated
		 */
		EClass BATCH = eINSTANCE.getBatch();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__CODE = eINSTANCE.getBatch_Code();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__TITLE = eINSTANCE.getBatch_Title();

		/**
		 * The meta object literal for the '<em><b>Recipe</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BATCH__RECIPE = eINSTANCE.getBatch_Recipe();

		/**
		 * The meta object literal for the '<em><b>Wanted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__WANTED = eINSTANCE.getBatch_Wanted();

		/**
		 * The meta object literal for the '<em><b>Spares</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__SPARES = eINSTANCE.getBatch_Spares();

		/**
		 * The meta object literal for the '<em><b>Created At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__CREATED_AT = eINSTANCE.getBatch_CreatedAt();

		/**
		 * The meta object literal for the '<em><b>Needed By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__NEEDED_BY = eINSTANCE.getBatch_NeededBy();

		/**
		 * The meta object literal for the '<em><b>Closed At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__CLOSED_AT = eINSTANCE.getBatch_ClosedAt();

		/**
		 * The meta object literal for the '<em><b>Reject Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__REJECT_LIMIT = eINSTANCE.getBatch_RejectLimit();

		/**
		 * The meta object literal for the '<em><b>Pots</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BATCH__POTS = eINSTANCE.getBatch_Pots();

		/**
		 * The meta object literal for the '<em><b>Start At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BATCH__START_AT = eINSTANCE.getBatch_StartAt();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.SavedSearchImpl <em>Saved Search</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.SavedSearchImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getSavedSearch()
		 * @generated
		 */
		EClass SAVED_SEARCH = eINSTANCE.getSavedSearch();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAVED_SEARCH__NAME = eINSTANCE.getSavedSearch_Name();

		/**
		 * The meta object literal for the '<em><b>Query</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAVED_SEARCH__QUERY = eINSTANCE.getSavedSearch_Query();

		/**
		 * The meta object literal for the '<em><b>Saved At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAVED_SEARCH__SAVED_AT = eINSTANCE.getSavedSearch_SavedAt();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RecordingImpl <em>Recording</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RecordingImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRecording()
		 * @generated
		 */
		EClass RECORDING = eINSTANCE.getRecording();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__KIND = eINSTANCE.getRecording_Kind();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__CODE = eINSTANCE.getRecording_Code();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__TITLE = eINSTANCE.getRecording_Title();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__AT = eINSTANCE.getRecording_At();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECORDING__FILE = eINSTANCE.getRecording_File();

		/**
		 * The meta object literal for the '<em><b>Session</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECORDING__SESSION = eINSTANCE.getRecording_Session();

		/**
		 * The meta object literal for the '<em><b>Instrument</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECORDING__INSTRUMENT = eINSTANCE.getRecording_Instrument();

		/**
		 * The meta object literal for the '<em><b>Separator</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__SEPARATOR = eINSTANCE.getRecording_Separator();

		/**
		 * The meta object literal for the '<em><b>Decimal Comma</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__DECIMAL_COMMA = eINSTANCE.getRecording_DecimalComma();

		/**
		 * The meta object literal for the '<em><b>Skip Lines</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__SKIP_LINES = eINSTANCE.getRecording_SkipLines();

		/**
		 * The meta object literal for the '<em><b>Cycle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__CYCLE = eINSTANCE.getRecording_Cycle();

		/**
		 * The meta object literal for the '<em><b>Left Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING__LEFT_OUT = eINSTANCE.getRecording_LeftOut();

		/**
		 * The meta object literal for the '<em><b>Channels</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECORDING__CHANNELS = eINSTANCE.getRecording_Channels();

		/**
		 * The meta object literal for the '<em><b>Marks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECORDING__MARKS = eINSTANCE.getRecording_Marks();

		/**
		 * The meta object literal for the '<em><b>Details</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECORDING__DETAILS = eINSTANCE.getRecording_Details();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RecordingChannelImpl <em>Recording Channel</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RecordingChannelImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRecordingChannel()
		 * @generated
		 */
		EClass RECORDING_CHANNEL = eINSTANCE.getRecordingChannel();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_CHANNEL__ROLE = eINSTANCE.getRecordingChannel_Role();

		/**
		 * The meta object literal for the '<em><b>Column</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_CHANNEL__COLUMN = eINSTANCE.getRecordingChannel_Column();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_CHANNEL__NAME = eINSTANCE.getRecordingChannel_Name();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_CHANNEL__UNIT = eINSTANCE.getRecordingChannel_Unit();

		/**
		 * The meta object literal for the '<em><b>Reversed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_CHANNEL__REVERSED = eINSTANCE.getRecordingChannel_Reversed();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RecordingMarkImpl <em>Recording Mark</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RecordingMarkImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRecordingMark()
		 * @generated
		 */
		EClass RECORDING_MARK = eINSTANCE.getRecordingMark();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_MARK__NAME = eINSTANCE.getRecordingMark_Name();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_MARK__POSITION = eINSTANCE.getRecordingMark_Position();

		/**
		 * The meta object literal for the '<em><b>By Hand</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_MARK__BY_HAND = eINSTANCE.getRecordingMark_ByHand();

		/**
		 * The meta object literal for the '<em><b>Left Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECORDING_MARK__LEFT_OUT = eINSTANCE.getRecordingMark_LeftOut();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.LawFitImpl <em>Law Fit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.LawFitImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getLawFit()
		 * @generated
		 */
		EClass LAW_FIT = eINSTANCE.getLawFit();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LAW_FIT__TITLE = eINSTANCE.getLawFit_Title();

		/**
		 * The meta object literal for the '<em><b>Law</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LAW_FIT__LAW = eINSTANCE.getLawFit_Law();

		/**
		 * The meta object literal for the '<em><b>Weighting</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LAW_FIT__WEIGHTING = eINSTANCE.getLawFit_Weighting();

		/**
		 * The meta object literal for the '<em><b>From Stretch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LAW_FIT__FROM_STRETCH = eINSTANCE.getLawFit_FromStretch();

		/**
		 * The meta object literal for the '<em><b>To Stretch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LAW_FIT__TO_STRETCH = eINSTANCE.getLawFit_ToStretch();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LAW_FIT__AT = eINSTANCE.getLawFit_At();

		/**
		 * The meta object literal for the '<em><b>Recordings</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LAW_FIT__RECORDINGS = eINSTANCE.getLawFit_Recordings();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.GaugeStudyImpl <em>Gauge Study</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.GaugeStudyImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getGaugeStudy()
		 * @generated
		 */
		EClass GAUGE_STUDY = eINSTANCE.getGaugeStudy();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_STUDY__CODE = eINSTANCE.getGaugeStudy_Code();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_STUDY__TITLE = eINSTANCE.getGaugeStudy_Title();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_STUDY__AT = eINSTANCE.getGaugeStudy_At();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GAUGE_STUDY__KEY = eINSTANCE.getGaugeStudy_Key();

		/**
		 * The meta object literal for the '<em><b>Instrument</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GAUGE_STUDY__INSTRUMENT = eINSTANCE.getGaugeStudy_Instrument();

		/**
		 * The meta object literal for the '<em><b>Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_STUDY__TOLERANCE = eINSTANCE.getGaugeStudy_Tolerance();

		/**
		 * The meta object literal for the '<em><b>Cells</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GAUGE_STUDY__CELLS = eINSTANCE.getGaugeStudy_Cells();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.GaugeCellImpl <em>Gauge Cell</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.GaugeCellImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getGaugeCell()
		 * @generated
		 */
		EClass GAUGE_CELL = eINSTANCE.getGaugeCell();

		/**
		 * The meta object literal for the '<em><b>Piece</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_CELL__PIECE = eINSTANCE.getGaugeCell_Piece();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_CELL__WHO = eINSTANCE.getGaugeCell_Who();

		/**
		 * The meta object literal for the '<em><b>Readings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GAUGE_CELL__READINGS = eINSTANCE.getGaugeCell_Readings();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.SpotMapImpl <em>Spot Map</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.SpotMapImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getSpotMap()
		 * @generated
		 */
		EClass SPOT_MAP = eINSTANCE.getSpotMap();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPOT_MAP__TITLE = eINSTANCE.getSpotMap_Title();

		/**
		 * The meta object literal for the '<em><b>Picture</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPOT_MAP__PICTURE = eINSTANCE.getSpotMap_Picture();

		/**
		 * The meta object literal for the '<em><b>Sketch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPOT_MAP__SKETCH = eINSTANCE.getSpotMap_Sketch();

		/**
		 * The meta object literal for the '<em><b>Places</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPOT_MAP__PLACES = eINSTANCE.getSpotMap_Places();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.SpotPlaceImpl <em>Spot Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.SpotPlaceImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getSpotPlace()
		 * @generated
		 */
		EClass SPOT_PLACE = eINSTANCE.getSpotPlace();

		/**
		 * The meta object literal for the '<em><b>Spot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPOT_PLACE__SPOT = eINSTANCE.getSpotPlace_Spot();

		/**
		 * The meta object literal for the '<em><b>Across</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPOT_PLACE__ACROSS = eINSTANCE.getSpotPlace_Across();

		/**
		 * The meta object literal for the '<em><b>Down</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPOT_PLACE__DOWN = eINSTANCE.getSpotPlace_Down();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RankingImpl <em>Ranking</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RankingImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRanking()
		 * @generated
		 */
		EClass RANKING = eINSTANCE.getRanking();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANKING__CODE = eINSTANCE.getRanking_Code();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANKING__TITLE = eINSTANCE.getRanking_Title();

		/**
		 * The meta object literal for the '<em><b>Question</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANKING__QUESTION = eINSTANCE.getRanking_Question();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANKING__AT = eINSTANCE.getRanking_At();

		/**
		 * The meta object literal for the '<em><b>Blind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANKING__BLIND = eINSTANCE.getRanking_Blind();

		/**
		 * The meta object literal for the '<em><b>Lists</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RANKING__LISTS = eINSTANCE.getRanking_Lists();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RankListImpl <em>Rank List</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RankListImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRankList()
		 * @generated
		 */
		EClass RANK_LIST = eINSTANCE.getRankList();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANK_LIST__WHO = eINSTANCE.getRankList_Who();

		/**
		 * The meta object literal for the '<em><b>Places</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RANK_LIST__PLACES = eINSTANCE.getRankList_Places();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.RankPlaceImpl <em>Rank Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.RankPlaceImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getRankPlace()
		 * @generated
		 */
		EClass RANK_PLACE = eINSTANCE.getRankPlace();

		/**
		 * The meta object literal for the '<em><b>Specimen</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RANK_PLACE__SPECIMEN = eINSTANCE.getRankPlace_Specimen();

		/**
		 * The meta object literal for the '<em><b>Rank</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RANK_PLACE__RANK = eINSTANCE.getRankPlace_Rank();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.AgeingPlanImpl <em>Ageing Plan</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.AgeingPlanImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getAgeingPlan()
		 * @generated
		 */
		EClass AGEING_PLAN = eINSTANCE.getAgeingPlan();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGEING_PLAN__TITLE = eINSTANCE.getAgeingPlan_Title();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AGEING_PLAN__KEY = eINSTANCE.getAgeingPlan_Key();

		/**
		 * The meta object literal for the '<em><b>Specimens</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AGEING_PLAN__SPECIMENS = eINSTANCE.getAgeingPlan_Specimens();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGEING_PLAN__FROM = eINSTANCE.getAgeingPlan_From();

		/**
		 * The meta object literal for the '<em><b>Remind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGEING_PLAN__REMIND = eINSTANCE.getAgeingPlan_Remind();

		/**
		 * The meta object literal for the '<em><b>Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AGEING_PLAN__POINTS = eINSTANCE.getAgeingPlan_Points();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.impl.AgeingPointImpl <em>Ageing Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.impl.AgeingPointImpl
		 * @see org.flexwright.model.impl.ModelPackageImpl#getAgeingPoint()
		 * @generated
		 */
		EClass AGEING_POINT = eINSTANCE.getAgeingPoint();

		/**
		 * The meta object literal for the '<em><b>Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGEING_POINT__DAYS = eINSTANCE.getAgeingPoint_Days();

		/**
		 * The meta object literal for the '<em><b>Window</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGEING_POINT__WINDOW = eINSTANCE.getAgeingPoint_Window();

		/**
		 * The meta object literal for the '<em><b>Skipped</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGEING_POINT__SKIPPED = eINSTANCE.getAgeingPoint_Skipped();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.Origin <em>Origin</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.Origin
		 * @see org.flexwright.model.impl.ModelPackageImpl#getOrigin()
		 * @generated
		 */
		EEnum ORIGIN = eINSTANCE.getOrigin();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.Importance <em>Importance</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.Importance
		 * @see org.flexwright.model.impl.ModelPackageImpl#getImportance()
		 * @generated
		 */
		EEnum IMPORTANCE = eINSTANCE.getImportance();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.TargetRule <em>Target Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.TargetRule
		 * @see org.flexwright.model.impl.ModelPackageImpl#getTargetRule()
		 * @generated
		 */
		EEnum TARGET_RULE = eINSTANCE.getTargetRule();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.TrialState <em>Trial State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.TrialState
		 * @see org.flexwright.model.impl.ModelPackageImpl#getTrialState()
		 * @generated
		 */
		EEnum TRIAL_STATE = eINSTANCE.getTrialState();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.StepState <em>Step State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.StepState
		 * @see org.flexwright.model.impl.ModelPackageImpl#getStepState()
		 * @generated
		 */
		EEnum STEP_STATE = eINSTANCE.getStepState();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.PieceKind <em>Piece Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.PieceKind
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPieceKind()
		 * @generated
		 */
		EEnum PIECE_KIND = eINSTANCE.getPieceKind();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.Censoring <em>Censoring</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.Censoring
		 * @see org.flexwright.model.impl.ModelPackageImpl#getCensoring()
		 * @generated
		 */
		EEnum CENSORING = eINSTANCE.getCensoring();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.Knowledge <em>Knowledge</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.Knowledge
		 * @see org.flexwright.model.impl.ModelPackageImpl#getKnowledge()
		 * @generated
		 */
		EEnum KNOWLEDGE = eINSTANCE.getKnowledge();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.AttachmentKind <em>Attachment Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.AttachmentKind
		 * @see org.flexwright.model.impl.ModelPackageImpl#getAttachmentKind()
		 * @generated
		 */
		EEnum ATTACHMENT_KIND = eINSTANCE.getAttachmentKind();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.PartRole <em>Part Role</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.PartRole
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPartRole()
		 * @generated
		 */
		EEnum PART_ROLE = eINSTANCE.getPartRole();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.AmountBasis <em>Amount Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.AmountBasis
		 * @see org.flexwright.model.impl.ModelPackageImpl#getAmountBasis()
		 * @generated
		 */
		EEnum AMOUNT_BASIS = eINSTANCE.getAmountBasis();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.PartsOf <em>Parts Of</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.PartsOf
		 * @see org.flexwright.model.impl.ModelPackageImpl#getPartsOf()
		 * @generated
		 */
		EEnum PARTS_OF = eINSTANCE.getPartsOf();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.GateWord <em>Gate Word</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.GateWord
		 * @see org.flexwright.model.impl.ModelPackageImpl#getGateWord()
		 * @generated
		 */
		EEnum GATE_WORD = eINSTANCE.getGateWord();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.NoteKind <em>Note Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.NoteKind
		 * @see org.flexwright.model.impl.ModelPackageImpl#getNoteKind()
		 * @generated
		 */
		EEnum NOTE_KIND = eINSTANCE.getNoteKind();

		/**
		 * The meta object literal for the '{@link org.flexwright.model.ChannelRole <em>Channel Role</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.model.ChannelRole
		 * @see org.flexwright.model.impl.ModelPackageImpl#getChannelRole()
		 * @generated
		 */
		EEnum CHANNEL_ROLE = eINSTANCE.getChannelRole();

		/**
		 * The meta object literal for the '<em>Instant</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.Instant
		 * @see org.flexwright.model.impl.ModelPackageImpl#getInstant()
		 * @generated
		 */
		EDataType INSTANT = eINSTANCE.getInstant();

		/**
		 * The meta object literal for the '<em>Local Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see org.flexwright.model.impl.ModelPackageImpl#getLocalDate()
		 * @generated
		 */
		EDataType LOCAL_DATE = eINSTANCE.getLocalDate();

	}

} //ModelPackage
