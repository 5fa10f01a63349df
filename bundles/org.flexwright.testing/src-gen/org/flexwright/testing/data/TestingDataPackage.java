/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

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
 * @see org.flexwright.testing.data.TestingDataFactory
 * @model kind="package"
 * @generated
 */
public interface TestingDataPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "data";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:flexwright:testing:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "testing";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	TestingDataPackage eINSTANCE = org.flexwright.testing.data.impl.TestingDataPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.HardnessDetailsImpl <em>Hardness Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.HardnessDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getHardnessDetails()
	 * @generated
	 */
	int HARDNESS_DETAILS = 0;

	/**
	 * The feature id for the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__RULE = 0;

	/**
	 * The feature id for the '<em><b>Sort</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__SORT = 1;

	/**
	 * The feature id for the '<em><b>Plies</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__PLIES = 2;

	/**
	 * The feature id for the '<em><b>Edge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__EDGE = 3;

	/**
	 * The feature id for the '<em><b>Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__SPACING = 4;

	/**
	 * The feature id for the '<em><b>On Stand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__ON_STAND = 5;

	/**
	 * The feature id for the '<em><b>Curved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__CURVED = 6;

	/**
	 * The feature id for the '<em><b>Ply Smooth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS__PLY_SMOOTH = 7;

	/**
	 * The number of structural features of the '<em>Hardness Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS_FEATURE_COUNT = 8;

	/**
	 * The number of operations of the '<em>Hardness Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HARDNESS_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.StretchDetailsImpl <em>Stretch Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.StretchDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getStretchDetails()
	 * @generated
	 */
	int STRETCH_DETAILS = 1;

	/**
	 * The feature id for the '<em><b>Loading</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__LOADING = 0;

	/**
	 * The feature id for the '<em><b>Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__PIECE = 1;

	/**
	 * The feature id for the '<em><b>Gauge Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__GAUGE_LENGTH = 2;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__WIDTH = 3;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__THICKNESS = 4;

	/**
	 * The feature id for the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__SPEED = 5;

	/**
	 * The feature id for the '<em><b>Slack</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__SLACK = 6;

	/**
	 * The feature id for the '<em><b>Zero Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__ZERO_FORCE = 7;

	/**
	 * The feature id for the '<em><b>Broke</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__BROKE = 8;

	/**
	 * The feature id for the '<em><b>Broke In Grip</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS__BROKE_IN_GRIP = 9;

	/**
	 * The number of structural features of the '<em>Stretch Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS_FEATURE_COUNT = 10;

	/**
	 * The number of operations of the '<em>Stretch Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STRETCH_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.PressDetailsImpl <em>Press Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.PressDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getPressDetails()
	 * @generated
	 */
	int PRESS_DETAILS = 2;

	/**
	 * The feature id for the '<em><b>Slack</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS__SLACK = 0;

	/**
	 * The feature id for the '<em><b>Zero Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS__ZERO_FORCE = 1;

	/**
	 * The feature id for the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS__SPEED = 2;

	/**
	 * The feature id for the '<em><b>Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS__STOP = 3;

	/**
	 * The feature id for the '<em><b>Tip</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS__TIP = 4;

	/**
	 * The number of structural features of the '<em>Press Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Press Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESS_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.HoldDetailsImpl <em>Hold Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.HoldDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getHoldDetails()
	 * @generated
	 */
	int HOLD_DETAILS = 3;

	/**
	 * The feature id for the '<em><b>Terms</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_DETAILS__TERMS = 0;

	/**
	 * The feature id for the '<em><b>Zero Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_DETAILS__ZERO_FORCE = 1;

	/**
	 * The feature id for the '<em><b>Squeeze</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_DETAILS__SQUEEZE = 2;

	/**
	 * The number of structural features of the '<em>Hold Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_DETAILS_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Hold Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.BounceDetailsImpl <em>Bounce Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.BounceDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getBounceDetails()
	 * @generated
	 */
	int BOUNCE_DETAILS = 4;

	/**
	 * The feature id for the '<em><b>Channel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS__CHANNEL = 0;

	/**
	 * The feature id for the '<em><b>Drop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS__DROP = 1;

	/**
	 * The feature id for the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS__WHAT = 2;

	/**
	 * The feature id for the '<em><b>Threshold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS__THRESHOLD = 3;

	/**
	 * The feature id for the '<em><b>Quiet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS__QUIET = 4;

	/**
	 * The number of structural features of the '<em>Bounce Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Bounce Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOUNCE_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.FilmDetailsImpl <em>Film Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.FilmDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getFilmDetails()
	 * @generated
	 */
	int FILM_DETAILS = 5;

	/**
	 * The feature id for the '<em><b>Frame Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILM_DETAILS__FRAME_RATE = 0;

	/**
	 * The feature id for the '<em><b>Pixels Per Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILM_DETAILS__PIXELS_PER_MM = 1;

	/**
	 * The feature id for the '<em><b>Height Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILM_DETAILS__HEIGHT_DOWN = 2;

	/**
	 * The number of structural features of the '<em>Film Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILM_DETAILS_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Film Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILM_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.impl.SoakDetailsImpl <em>Soak Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.impl.SoakDetailsImpl
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getSoakDetails()
	 * @generated
	 */
	int SOAK_DETAILS = 6;

	/**
	 * The feature id for the '<em><b>Liquid</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOAK_DETAILS__LIQUID = 0;

	/**
	 * The feature id for the '<em><b>Drying</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOAK_DETAILS__DRYING = 1;

	/**
	 * The feature id for the '<em><b>Celsius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOAK_DETAILS__CELSIUS = 2;

	/**
	 * The number of structural features of the '<em>Soak Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOAK_DETAILS_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Soak Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOAK_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.HardnessRule <em>Hardness Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.HardnessRule
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getHardnessRule()
	 * @generated
	 */
	int HARDNESS_RULE = 7;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.RubberSort <em>Rubber Sort</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.RubberSort
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getRubberSort()
	 * @generated
	 */
	int RUBBER_SORT = 8;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.StretchLoading <em>Stretch Loading</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.StretchLoading
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getStretchLoading()
	 * @generated
	 */
	int STRETCH_LOADING = 9;

	/**
	 * The meta object id for the '{@link org.flexwright.testing.data.Slack <em>Slack</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.testing.data.Slack
	 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getSlack()
	 * @generated
	 */
	int SLACK = 10;


	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.HardnessDetails <em>Hardness Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hardness Details</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails
	 * @generated
	 */
	EClass getHardnessDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getRule <em>Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getRule()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_Rule();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getSort <em>Sort</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sort</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getSort()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_Sort();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getPlies <em>Plies</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plies</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getPlies()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_Plies();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getEdge <em>Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Edge</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getEdge()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_Edge();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getSpacing <em>Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spacing</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getSpacing()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_Spacing();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getOnStand <em>On Stand</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On Stand</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getOnStand()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_OnStand();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getCurved <em>Curved</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Curved</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getCurved()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_Curved();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HardnessDetails#getPlySmooth <em>Ply Smooth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ply Smooth</em>'.
	 * @see org.flexwright.testing.data.HardnessDetails#getPlySmooth()
	 * @see #getHardnessDetails()
	 * @generated
	 */
	EAttribute getHardnessDetails_PlySmooth();

	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.StretchDetails <em>Stretch Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stretch Details</em>'.
	 * @see org.flexwright.testing.data.StretchDetails
	 * @generated
	 */
	EClass getStretchDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getLoading <em>Loading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Loading</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getLoading()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Loading();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getPiece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getPiece()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Piece();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getGaugeLength <em>Gauge Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gauge Length</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getGaugeLength()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_GaugeLength();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getWidth()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getThickness()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getSpeed <em>Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Speed</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getSpeed()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Speed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getSlack <em>Slack</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slack</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getSlack()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Slack();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getZeroForce <em>Zero Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Zero Force</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getZeroForce()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_ZeroForce();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getBroke <em>Broke</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Broke</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getBroke()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_Broke();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.StretchDetails#getBrokeInGrip <em>Broke In Grip</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Broke In Grip</em>'.
	 * @see org.flexwright.testing.data.StretchDetails#getBrokeInGrip()
	 * @see #getStretchDetails()
	 * @generated
	 */
	EAttribute getStretchDetails_BrokeInGrip();

	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.PressDetails <em>Press Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Press Details</em>'.
	 * @see org.flexwright.testing.data.PressDetails
	 * @generated
	 */
	EClass getPressDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.PressDetails#getSlack <em>Slack</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slack</em>'.
	 * @see org.flexwright.testing.data.PressDetails#getSlack()
	 * @see #getPressDetails()
	 * @generated
	 */
	EAttribute getPressDetails_Slack();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.PressDetails#getZeroForce <em>Zero Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Zero Force</em>'.
	 * @see org.flexwright.testing.data.PressDetails#getZeroForce()
	 * @see #getPressDetails()
	 * @generated
	 */
	EAttribute getPressDetails_ZeroForce();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.PressDetails#getSpeed <em>Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Speed</em>'.
	 * @see org.flexwright.testing.data.PressDetails#getSpeed()
	 * @see #getPressDetails()
	 * @generated
	 */
	EAttribute getPressDetails_Speed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.PressDetails#getStop <em>Stop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stop</em>'.
	 * @see org.flexwright.testing.data.PressDetails#getStop()
	 * @see #getPressDetails()
	 * @generated
	 */
	EAttribute getPressDetails_Stop();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.PressDetails#getTip <em>Tip</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip</em>'.
	 * @see org.flexwright.testing.data.PressDetails#getTip()
	 * @see #getPressDetails()
	 * @generated
	 */
	EAttribute getPressDetails_Tip();

	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.HoldDetails <em>Hold Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hold Details</em>'.
	 * @see org.flexwright.testing.data.HoldDetails
	 * @generated
	 */
	EClass getHoldDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HoldDetails#getTerms <em>Terms</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Terms</em>'.
	 * @see org.flexwright.testing.data.HoldDetails#getTerms()
	 * @see #getHoldDetails()
	 * @generated
	 */
	EAttribute getHoldDetails_Terms();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HoldDetails#getZeroForce <em>Zero Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Zero Force</em>'.
	 * @see org.flexwright.testing.data.HoldDetails#getZeroForce()
	 * @see #getHoldDetails()
	 * @generated
	 */
	EAttribute getHoldDetails_ZeroForce();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.HoldDetails#getSqueeze <em>Squeeze</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Squeeze</em>'.
	 * @see org.flexwright.testing.data.HoldDetails#getSqueeze()
	 * @see #getHoldDetails()
	 * @generated
	 */
	EAttribute getHoldDetails_Squeeze();

	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.BounceDetails <em>Bounce Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bounce Details</em>'.
	 * @see org.flexwright.testing.data.BounceDetails
	 * @generated
	 */
	EClass getBounceDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.BounceDetails#getChannel <em>Channel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Channel</em>'.
	 * @see org.flexwright.testing.data.BounceDetails#getChannel()
	 * @see #getBounceDetails()
	 * @generated
	 */
	EAttribute getBounceDetails_Channel();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.BounceDetails#getDrop <em>Drop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drop</em>'.
	 * @see org.flexwright.testing.data.BounceDetails#getDrop()
	 * @see #getBounceDetails()
	 * @generated
	 */
	EAttribute getBounceDetails_Drop();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.BounceDetails#getWhat <em>What</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>What</em>'.
	 * @see org.flexwright.testing.data.BounceDetails#getWhat()
	 * @see #getBounceDetails()
	 * @generated
	 */
	EAttribute getBounceDetails_What();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.BounceDetails#getThreshold <em>Threshold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Threshold</em>'.
	 * @see org.flexwright.testing.data.BounceDetails#getThreshold()
	 * @see #getBounceDetails()
	 * @generated
	 */
	EAttribute getBounceDetails_Threshold();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.BounceDetails#getQuiet <em>Quiet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quiet</em>'.
	 * @see org.flexwright.testing.data.BounceDetails#getQuiet()
	 * @see #getBounceDetails()
	 * @generated
	 */
	EAttribute getBounceDetails_Quiet();

	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.FilmDetails <em>Film Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Film Details</em>'.
	 * @see org.flexwright.testing.data.FilmDetails
	 * @generated
	 */
	EClass getFilmDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.FilmDetails#getFrameRate <em>Frame Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Rate</em>'.
	 * @see org.flexwright.testing.data.FilmDetails#getFrameRate()
	 * @see #getFilmDetails()
	 * @generated
	 */
	EAttribute getFilmDetails_FrameRate();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.FilmDetails#getPixelsPerMm <em>Pixels Per Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pixels Per Mm</em>'.
	 * @see org.flexwright.testing.data.FilmDetails#getPixelsPerMm()
	 * @see #getFilmDetails()
	 * @generated
	 */
	EAttribute getFilmDetails_PixelsPerMm();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.FilmDetails#getHeightDown <em>Height Down</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Down</em>'.
	 * @see org.flexwright.testing.data.FilmDetails#getHeightDown()
	 * @see #getFilmDetails()
	 * @generated
	 */
	EAttribute getFilmDetails_HeightDown();

	/**
	 * Returns the meta object for class '{@link org.flexwright.testing.data.SoakDetails <em>Soak Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Soak Details</em>'.
	 * @see org.flexwright.testing.data.SoakDetails
	 * @generated
	 */
	EClass getSoakDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.SoakDetails#getLiquid <em>Liquid</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Liquid</em>'.
	 * @see org.flexwright.testing.data.SoakDetails#getLiquid()
	 * @see #getSoakDetails()
	 * @generated
	 */
	EAttribute getSoakDetails_Liquid();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.SoakDetails#getDrying <em>Drying</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drying</em>'.
	 * @see org.flexwright.testing.data.SoakDetails#getDrying()
	 * @see #getSoakDetails()
	 * @generated
	 */
	EAttribute getSoakDetails_Drying();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.testing.data.SoakDetails#getCelsius <em>Celsius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Celsius</em>'.
	 * @see org.flexwright.testing.data.SoakDetails#getCelsius()
	 * @see #getSoakDetails()
	 * @generated
	 */
	EAttribute getSoakDetails_Celsius();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.testing.data.HardnessRule <em>Hardness Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hardness Rule</em>'.
	 * @see org.flexwright.testing.data.HardnessRule
	 * @generated
	 */
	EEnum getHardnessRule();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.testing.data.RubberSort <em>Rubber Sort</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Rubber Sort</em>'.
	 * @see org.flexwright.testing.data.RubberSort
	 * @generated
	 */
	EEnum getRubberSort();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.testing.data.StretchLoading <em>Stretch Loading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Stretch Loading</em>'.
	 * @see org.flexwright.testing.data.StretchLoading
	 * @generated
	 */
	EEnum getStretchLoading();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.testing.data.Slack <em>Slack</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Slack</em>'.
	 * @see org.flexwright.testing.data.Slack
	 * @generated
	 */
	EEnum getSlack();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	TestingDataFactory getTestingDataFactory();

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
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.HardnessDetailsImpl <em>Hardness Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.HardnessDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getHardnessDetails()
		 * @generated
		 */
		EClass HARDNESS_DETAILS = eINSTANCE.getHardnessDetails();

		/**
		 * The meta object literal for the '<em><b>Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__RULE = eINSTANCE.getHardnessDetails_Rule();

		/**
		 * The meta object literal for the '<em><b>Sort</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__SORT = eINSTANCE.getHardnessDetails_Sort();

		/**
		 * The meta object literal for the '<em><b>Plies</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__PLIES = eINSTANCE.getHardnessDetails_Plies();

		/**
		 * The meta object literal for the '<em><b>Edge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__EDGE = eINSTANCE.getHardnessDetails_Edge();

		/**
		 * The meta object literal for the '<em><b>Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__SPACING = eINSTANCE.getHardnessDetails_Spacing();

		/**
		 * The meta object literal for the '<em><b>On Stand</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__ON_STAND = eINSTANCE.getHardnessDetails_OnStand();

		/**
		 * The meta object literal for the '<em><b>Curved</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__CURVED = eINSTANCE.getHardnessDetails_Curved();

		/**
		 * The meta object literal for the '<em><b>Ply Smooth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HARDNESS_DETAILS__PLY_SMOOTH = eINSTANCE.getHardnessDetails_PlySmooth();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.StretchDetailsImpl <em>Stretch Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.StretchDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getStretchDetails()
		 * @generated
		 */
		EClass STRETCH_DETAILS = eINSTANCE.getStretchDetails();

		/**
		 * The meta object literal for the '<em><b>Loading</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__LOADING = eINSTANCE.getStretchDetails_Loading();

		/**
		 * The meta object literal for the '<em><b>Piece</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__PIECE = eINSTANCE.getStretchDetails_Piece();

		/**
		 * The meta object literal for the '<em><b>Gauge Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__GAUGE_LENGTH = eINSTANCE.getStretchDetails_GaugeLength();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__WIDTH = eINSTANCE.getStretchDetails_Width();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__THICKNESS = eINSTANCE.getStretchDetails_Thickness();

		/**
		 * The meta object literal for the '<em><b>Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__SPEED = eINSTANCE.getStretchDetails_Speed();

		/**
		 * The meta object literal for the '<em><b>Slack</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__SLACK = eINSTANCE.getStretchDetails_Slack();

		/**
		 * The meta object literal for the '<em><b>Zero Force</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__ZERO_FORCE = eINSTANCE.getStretchDetails_ZeroForce();

		/**
		 * The meta object literal for the '<em><b>Broke</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__BROKE = eINSTANCE.getStretchDetails_Broke();

		/**
		 * The meta object literal for the '<em><b>Broke In Grip</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STRETCH_DETAILS__BROKE_IN_GRIP = eINSTANCE.getStretchDetails_BrokeInGrip();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.PressDetailsImpl <em>Press Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.PressDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getPressDetails()
		 * @generated
		 */
		EClass PRESS_DETAILS = eINSTANCE.getPressDetails();

		/**
		 * The meta object literal for the '<em><b>Slack</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESS_DETAILS__SLACK = eINSTANCE.getPressDetails_Slack();

		/**
		 * The meta object literal for the '<em><b>Zero Force</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESS_DETAILS__ZERO_FORCE = eINSTANCE.getPressDetails_ZeroForce();

		/**
		 * The meta object literal for the '<em><b>Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESS_DETAILS__SPEED = eINSTANCE.getPressDetails_Speed();

		/**
		 * The meta object literal for the '<em><b>Stop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESS_DETAILS__STOP = eINSTANCE.getPressDetails_Stop();

		/**
		 * The meta object literal for the '<em><b>Tip</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESS_DETAILS__TIP = eINSTANCE.getPressDetails_Tip();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.HoldDetailsImpl <em>Hold Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.HoldDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getHoldDetails()
		 * @generated
		 */
		EClass HOLD_DETAILS = eINSTANCE.getHoldDetails();

		/**
		 * The meta object literal for the '<em><b>Terms</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLD_DETAILS__TERMS = eINSTANCE.getHoldDetails_Terms();

		/**
		 * The meta object literal for the '<em><b>Zero Force</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLD_DETAILS__ZERO_FORCE = eINSTANCE.getHoldDetails_ZeroForce();

		/**
		 * The meta object literal for the '<em><b>Squeeze</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLD_DETAILS__SQUEEZE = eINSTANCE.getHoldDetails_Squeeze();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.BounceDetailsImpl <em>Bounce Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.BounceDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getBounceDetails()
		 * @generated
		 */
		EClass BOUNCE_DETAILS = eINSTANCE.getBounceDetails();

		/**
		 * The meta object literal for the '<em><b>Channel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOUNCE_DETAILS__CHANNEL = eINSTANCE.getBounceDetails_Channel();

		/**
		 * The meta object literal for the '<em><b>Drop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOUNCE_DETAILS__DROP = eINSTANCE.getBounceDetails_Drop();

		/**
		 * The meta object literal for the '<em><b>What</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOUNCE_DETAILS__WHAT = eINSTANCE.getBounceDetails_What();

		/**
		 * The meta object literal for the '<em><b>Threshold</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOUNCE_DETAILS__THRESHOLD = eINSTANCE.getBounceDetails_Threshold();

		/**
		 * The meta object literal for the '<em><b>Quiet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOUNCE_DETAILS__QUIET = eINSTANCE.getBounceDetails_Quiet();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.FilmDetailsImpl <em>Film Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.FilmDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getFilmDetails()
		 * @generated
		 */
		EClass FILM_DETAILS = eINSTANCE.getFilmDetails();

		/**
		 * The meta object literal for the '<em><b>Frame Rate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILM_DETAILS__FRAME_RATE = eINSTANCE.getFilmDetails_FrameRate();

		/**
		 * The meta object literal for the '<em><b>Pixels Per Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILM_DETAILS__PIXELS_PER_MM = eINSTANCE.getFilmDetails_PixelsPerMm();

		/**
		 * The meta object literal for the '<em><b>Height Down</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILM_DETAILS__HEIGHT_DOWN = eINSTANCE.getFilmDetails_HeightDown();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.impl.SoakDetailsImpl <em>Soak Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.impl.SoakDetailsImpl
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getSoakDetails()
		 * @generated
		 */
		EClass SOAK_DETAILS = eINSTANCE.getSoakDetails();

		/**
		 * The meta object literal for the '<em><b>Liquid</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOAK_DETAILS__LIQUID = eINSTANCE.getSoakDetails_Liquid();

		/**
		 * The meta object literal for the '<em><b>Drying</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOAK_DETAILS__DRYING = eINSTANCE.getSoakDetails_Drying();

		/**
		 * The meta object literal for the '<em><b>Celsius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOAK_DETAILS__CELSIUS = eINSTANCE.getSoakDetails_Celsius();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.HardnessRule <em>Hardness Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.HardnessRule
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getHardnessRule()
		 * @generated
		 */
		EEnum HARDNESS_RULE = eINSTANCE.getHardnessRule();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.RubberSort <em>Rubber Sort</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.RubberSort
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getRubberSort()
		 * @generated
		 */
		EEnum RUBBER_SORT = eINSTANCE.getRubberSort();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.StretchLoading <em>Stretch Loading</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.StretchLoading
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getStretchLoading()
		 * @generated
		 */
		EEnum STRETCH_LOADING = eINSTANCE.getStretchLoading();

		/**
		 * The meta object literal for the '{@link org.flexwright.testing.data.Slack <em>Slack</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.testing.data.Slack
		 * @see org.flexwright.testing.data.impl.TestingDataPackageImpl#getSlack()
		 * @generated
		 */
		EEnum SLACK = eINSTANCE.getSlack();

	}

} //TestingDataPackage
