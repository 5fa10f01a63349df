/**
 */
package org.flexwright.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.model.Acknowledgement;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.AmountBasis;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Batch;
import org.flexwright.model.BenchNote;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.Censoring;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Decision;
import org.flexwright.model.Entry;
import org.flexwright.model.GateWord;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Identified;
import org.flexwright.model.Importance;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.LawFit;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Need;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Origin;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PluginUse;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Provenance;
import org.flexwright.model.RankList;
import org.flexwright.model.RankPlace;
import org.flexwright.model.Ranking;
import org.flexwright.model.Reading;
import org.flexwright.model.Recipe;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingChannel;
import org.flexwright.model.RecordingMark;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.RunInput;
import org.flexwright.model.RunResult;
import org.flexwright.model.SavedSearch;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.model.Weighing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelPackageImpl extends EPackageImpl implements ModelPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass identifiedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass entryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass provenanceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass projectEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pluginUseEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass needEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass propertyKeyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass targetSheetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass targetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass materialGradeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass materialValueEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lotEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass instrumentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sessionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass specimenEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass controlPieceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass referencePartEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass partEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass measurementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass readingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass trialEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stepEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass materialUseEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass weighingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass attachmentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass recipeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass acknowledgementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stopOverrideEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass calculationRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass runInputEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass runResultEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass benchNoteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass decisionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mouldEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mouldCastEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass premixEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass batchEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass savedSearchEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass recordingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass recordingChannelEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass recordingMarkEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lawFitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass gaugeStudyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass gaugeCellEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass spotMapEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass spotPlaceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rankingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rankListEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rankPlaceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ageingPlanEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ageingPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum originEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum importanceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum targetRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum trialStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum stepStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pieceKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum censoringEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum knowledgeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum attachmentKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum partRoleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum amountBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum partsOfEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum gateWordEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum noteKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum channelRoleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType instantEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType localDateEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.flexwright.model.ModelPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private ModelPackageImpl() {
		super(eNS_URI, ModelFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link ModelPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static ModelPackage init() {
		if (isInited) return (ModelPackage)EPackage.Registry.INSTANCE.getEPackage(ModelPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredModelPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		ModelPackageImpl theModelPackage = registeredModelPackage instanceof ModelPackageImpl ? (ModelPackageImpl)registeredModelPackage : new ModelPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theModelPackage.createPackageContents();

		// Initialize created meta-data
		theModelPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theModelPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(ModelPackage.eNS_URI, theModelPackage);
		return theModelPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getIdentified() {
		return identifiedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIdentified_Id() {
		return (EAttribute)identifiedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getEntry() {
		return entryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEntry_Provenance() {
		return (EReference)entryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEntry_Note() {
		return (EAttribute)entryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProvenance() {
		return provenanceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_Feature() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_Origin() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_Source() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_Uncertainty() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_TypedAs() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_By() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProvenance_At() {
		return (EAttribute)provenanceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProject() {
		return projectEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Title() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Job() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Invented() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_CreatedAt() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_WrittenBy() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_FormatVersion() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_JournalSeq() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Needs() {
		return (EReference)projectEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_ReferenceParts() {
		return (EReference)projectEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_TargetSheets() {
		return (EReference)projectEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Grades() {
		return (EReference)projectEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Instruments() {
		return (EReference)projectEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_ControlPieces() {
		return (EReference)projectEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Sessions() {
		return (EReference)projectEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Trials() {
		return (EReference)projectEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Recipes() {
		return (EReference)projectEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Attachments() {
		return (EReference)projectEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Acknowledgements() {
		return (EReference)projectEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Overrides() {
		return (EReference)projectEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Plugins() {
		return (EReference)projectEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Moulds() {
		return (EReference)projectEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Premixes() {
		return (EReference)projectEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Batches() {
		return (EReference)projectEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Searches() {
		return (EReference)projectEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_HourlyRate() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_CupPrice() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_GaugeStudies() {
		return (EReference)projectEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_SpotMaps() {
		return (EReference)projectEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_LawFits() {
		return (EReference)projectEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Rankings() {
		return (EReference)projectEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_AgeingPlans() {
		return (EReference)projectEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPluginUse() {
		return pluginUseEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPluginUse_NsURI() {
		return (EAttribute)pluginUseEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPluginUse_Plugin() {
		return (EAttribute)pluginUseEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPluginUse_Version() {
		return (EAttribute)pluginUseEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNeed() {
		return needEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNeed_Text() {
		return (EAttribute)needEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNeed_Importance() {
		return (EAttribute)needEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPropertyKey() {
		return propertyKeyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPropertyKey_Property() {
		return (EAttribute)propertyKeyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPropertyKey_PieceKind() {
		return (EAttribute)propertyKeyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPropertyKey_Spot() {
		return (EAttribute)propertyKeyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPropertyKey_Support() {
		return (EAttribute)propertyKeyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPropertyKey_Dwell() {
		return (EAttribute)propertyKeyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTargetSheet() {
		return targetSheetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTargetSheet_Version() {
		return (EAttribute)targetSheetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTargetSheet_FrozenAt() {
		return (EAttribute)targetSheetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTargetSheet_FrozenBy() {
		return (EAttribute)targetSheetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTargetSheet_Reason() {
		return (EAttribute)targetSheetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTargetSheet_Targets() {
		return (EReference)targetSheetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTarget() {
		return targetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTarget_Key() {
		return (EReference)targetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Rule() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Low() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_High() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Nominal() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Tolerance() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Weight() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_RejectBelow() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_RejectAbove() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_AllowedShare() {
		return (EAttribute)targetEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMaterialGrade() {
		return materialGradeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialGrade_Code() {
		return (EAttribute)materialGradeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialGrade_Name() {
		return (EAttribute)materialGradeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialGrade_Family() {
		return (EAttribute)materialGradeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialGrade_Role() {
		return (EAttribute)materialGradeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialGrade_Hazards() {
		return (EAttribute)materialGradeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialGrade_Values() {
		return (EReference)materialGradeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialGrade_Lots() {
		return (EReference)materialGradeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialGrade_PackSize() {
		return (EAttribute)materialGradeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMaterialValue() {
		return materialValueEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_Property() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_Unit() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_SheetValue() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_SheetSource() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_OwnValue() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_OwnUncertainty() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialValue_OwnSource() {
		return (EAttribute)materialValueEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLot() {
		return lotEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_Code() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_Opened() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_Expires() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_Price() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_Amount() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_SheetDate() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLot_SheetRevision() {
		return (EAttribute)lotEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLot_Values() {
		return (EReference)lotEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInstrument() {
		return instrumentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Name() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Kind() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Unit() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Resolution() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Accuracy() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Scale() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Spread() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_SpreadFrom() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_CheckedOn() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_CheckEveryDays() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_CheckNote() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getInstrument_Study() {
		return (EReference)instrumentEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSession() {
		return sessionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_Code() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_At() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_RoomC() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_RoomRh() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_Who() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSession_Instruments() {
		return (EReference)sessionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSession_ControlPiece() {
		return (EReference)sessionEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_ConditioningHours() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSession_Room() {
		return (EAttribute)sessionEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSpecimen() {
		return specimenEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_Code() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_PieceKind() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_Thickness() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_MadeAt() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_Failed() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_FailReason() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSpecimen_Measurements() {
		return (EReference)specimenEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSpecimen_Recordings() {
		return (EReference)specimenEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getControlPiece() {
		return controlPieceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getControlPiece_Usual() {
		return (EAttribute)controlPieceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getControlPiece_UsualSpread() {
		return (EAttribute)controlPieceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getControlPiece_UsualFrom() {
		return (EAttribute)controlPieceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReferencePart() {
		return referencePartEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReferencePart_Name() {
		return (EAttribute)referencePartEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReferencePart_Condition() {
		return (EAttribute)referencePartEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReferencePart_AgeYears() {
		return (EAttribute)referencePartEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getReferencePart_Photos() {
		return (EReference)referencePartEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPart() {
		return partEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPart_Photos() {
		return (EReference)partEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMeasurement() {
		return measurementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasurement_Kind() {
		return (EAttribute)measurementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMeasurement_Key() {
		return (EReference)measurementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasurement_At() {
		return (EAttribute)measurementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasurement_DelayHours() {
		return (EAttribute)measurementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasurement_PieceC() {
		return (EAttribute)measurementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasurement_Knowledge() {
		return (EAttribute)measurementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMeasurement_Session() {
		return (EReference)measurementEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMeasurement_Instrument() {
		return (EReference)measurementEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMeasurement_Readings() {
		return (EReference)measurementEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMeasurement_Details() {
		return (EReference)measurementEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMeasurement_Recording() {
		return (EReference)measurementEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReading() {
		return readingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Value() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Censoring() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Yes() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_At() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_TypedAs() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_LeftOut() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTrial() {
		return trialEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Code() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Title() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Idea() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Route() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_BasedOn() {
		return (EReference)trialEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_State() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_StateReason() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_CreatedAt() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_MadeAt() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Conclusion() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Cost() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Hours() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Steps() {
		return (EReference)trialEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Parts() {
		return (EReference)trialEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Calculations() {
		return (EReference)trialEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Attachments() {
		return (EReference)trialEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_ContactAt() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_CupLabel() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Mould() {
		return (EReference)trialEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Notes() {
		return (EReference)trialEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Decisions() {
		return (EReference)trialEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_PartsWanted() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStep() {
		return stepEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_Kind() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_Title() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_State() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_Unconfirmed() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_ConfirmedBy() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_ConfirmedAt() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_PlannedStart() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_PlannedDuration() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_StartedAt() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStep_EndedAt() {
		return (EAttribute)stepEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStep_Session() {
		return (EReference)stepEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStep_Uses() {
		return (EReference)stepEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStep_Details() {
		return (EReference)stepEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStep_Attachments() {
		return (EReference)stepEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMaterialUse() {
		return materialUseEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_Role() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialUse_Grade() {
		return (EReference)materialUseEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialUse_Lot() {
		return (EReference)materialUseEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_Planned() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialUse_Weighings() {
		return (EReference)materialUseEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_Parts() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_PartsBy() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_PartsOf() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_Moisture() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterialUse_Dried() {
		return (EAttribute)materialUseEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMaterialUse_Premix() {
		return (EReference)materialUseEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWeighing() {
		return weighingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_Gross() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_Tare() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_Net() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_At() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighing_Correction() {
		return (EAttribute)weighingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWeighing_Instrument() {
		return (EReference)weighingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAttachment() {
		return attachmentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAttachment_Kind() {
		return (EAttribute)attachmentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAttachment_FileName() {
		return (EAttribute)attachmentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAttachment_Path() {
		return (EAttribute)attachmentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAttachment_Sha256() {
		return (EAttribute)attachmentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAttachment_Caption() {
		return (EAttribute)attachmentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAttachment_AddedAt() {
		return (EAttribute)attachmentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRecipe() {
		return recipeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Code() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Version() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_FrozenAt() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_FrozenBy() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Limits() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_From() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Plan() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Materials() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_AsMade() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Targets() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Changes() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Sessions() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Instruments() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Premixes() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Attachments() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Mould() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Title() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Job() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecipe_Invented() {
		return (EAttribute)recipeEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Needs() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_References() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Overrides() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecipe_Acknowledgements() {
		return (EReference)recipeEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAcknowledgement() {
		return acknowledgementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcknowledgement_Prompt() {
		return (EAttribute)acknowledgementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcknowledgement_Session() {
		return (EReference)acknowledgementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcknowledgement_Lot() {
		return (EReference)acknowledgementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcknowledgement_Step() {
		return (EReference)acknowledgementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcknowledgement_Who() {
		return (EAttribute)acknowledgementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcknowledgement_At() {
		return (EAttribute)acknowledgementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcknowledgement_SheetDate() {
		return (EAttribute)acknowledgementEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcknowledgement_SheetRevision() {
		return (EAttribute)acknowledgementEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStopOverride() {
		return stopOverrideEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopOverride_Rule() {
		return (EAttribute)stopOverrideEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopOverride_Subject() {
		return (EAttribute)stopOverrideEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopOverride_InputHash() {
		return (EAttribute)stopOverrideEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopOverride_Reason() {
		return (EAttribute)stopOverrideEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopOverride_Who() {
		return (EAttribute)stopOverrideEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopOverride_At() {
		return (EAttribute)stopOverrideEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCalculationRun() {
		return calculationRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalculationRun_Calculation() {
		return (EAttribute)calculationRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalculationRun_Version() {
		return (EAttribute)calculationRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalculationRun_ProgramVersion() {
		return (EAttribute)calculationRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalculationRun_At() {
		return (EAttribute)calculationRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCalculationRun_Inputs() {
		return (EReference)calculationRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCalculationRun_Results() {
		return (EReference)calculationRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCalculationRun_Refusal() {
		return (EAttribute)calculationRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRunInput() {
		return runInputEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunInput_Name() {
		return (EAttribute)runInputEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunInput_Value() {
		return (EAttribute)runInputEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunInput_Text() {
		return (EAttribute)runInputEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunInput_Unit() {
		return (EAttribute)runInputEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunInput_Origin() {
		return (EAttribute)runInputEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunInput_BoundTo() {
		return (EAttribute)runInputEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRunResult() {
		return runResultEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_Name() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_Low() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_Likely() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_High() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_Text() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_Unit() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunResult_Source() {
		return (EAttribute)runResultEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBenchNote() {
		return benchNoteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchNote_Kind() {
		return (EAttribute)benchNoteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchNote_At() {
		return (EAttribute)benchNoteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBenchNote_Step() {
		return (EReference)benchNoteEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBenchNote_Attachment() {
		return (EReference)benchNoteEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchNote_SortedAt() {
		return (EAttribute)benchNoteEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchNote_SortedAs() {
		return (EAttribute)benchNoteEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDecision() {
		return decisionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDecision_Word() {
		return (EAttribute)decisionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDecision_At() {
		return (EAttribute)decisionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDecision_Who() {
		return (EAttribute)decisionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDecision_Reason() {
		return (EAttribute)decisionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDecision_Open() {
		return (EAttribute)decisionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDecision_Step() {
		return (EReference)decisionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMould() {
		return mouldEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_Code() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_Name() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_Material() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_MadeOn() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_Cavities() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_CastsBefore() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_CastsLimit() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_TurnMinutes() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMould_Price() {
		return (EAttribute)mouldEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMould_Casts() {
		return (EReference)mouldEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMouldCast() {
		return mouldCastEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMouldCast_At() {
		return (EAttribute)mouldCastEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMouldCast_Trial() {
		return (EReference)mouldCastEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMouldCast_Release() {
		return (EAttribute)mouldCastEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMouldCast_ReleasedWell() {
		return (EAttribute)mouldCastEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMouldCast_Parts() {
		return (EAttribute)mouldCastEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPremix() {
		return premixEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPremix_Code() {
		return (EAttribute)premixEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPremix_Title() {
		return (EAttribute)premixEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPremix_MadeAt() {
		return (EAttribute)premixEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPremix_RestedHours() {
		return (EAttribute)premixEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPremix_DriedC() {
		return (EAttribute)premixEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPremix_DriedHours() {
		return (EAttribute)premixEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPremix_Ingredients() {
		return (EReference)premixEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBatch() {
		return batchEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_Code() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_Title() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBatch_Recipe() {
		return (EReference)batchEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_Wanted() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_Spares() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_CreatedAt() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_NeededBy() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_ClosedAt() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_RejectLimit() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBatch_Pots() {
		return (EReference)batchEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatch_StartAt() {
		return (EAttribute)batchEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSavedSearch() {
		return savedSearchEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSavedSearch_Name() {
		return (EAttribute)savedSearchEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSavedSearch_Query() {
		return (EAttribute)savedSearchEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSavedSearch_SavedAt() {
		return (EAttribute)savedSearchEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRecording() {
		return recordingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_Kind() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_Code() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_Title() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_At() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecording_File() {
		return (EReference)recordingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecording_Session() {
		return (EReference)recordingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecording_Instrument() {
		return (EReference)recordingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_Separator() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_DecimalComma() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_SkipLines() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_Cycle() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecording_LeftOut() {
		return (EAttribute)recordingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecording_Channels() {
		return (EReference)recordingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecording_Marks() {
		return (EReference)recordingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRecording_Details() {
		return (EReference)recordingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRecordingChannel() {
		return recordingChannelEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingChannel_Role() {
		return (EAttribute)recordingChannelEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingChannel_Column() {
		return (EAttribute)recordingChannelEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingChannel_Name() {
		return (EAttribute)recordingChannelEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingChannel_Unit() {
		return (EAttribute)recordingChannelEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingChannel_Reversed() {
		return (EAttribute)recordingChannelEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRecordingMark() {
		return recordingMarkEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingMark_Name() {
		return (EAttribute)recordingMarkEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingMark_Position() {
		return (EAttribute)recordingMarkEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingMark_ByHand() {
		return (EAttribute)recordingMarkEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRecordingMark_LeftOut() {
		return (EAttribute)recordingMarkEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLawFit() {
		return lawFitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLawFit_Title() {
		return (EAttribute)lawFitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLawFit_Law() {
		return (EAttribute)lawFitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLawFit_Weighting() {
		return (EAttribute)lawFitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLawFit_FromStretch() {
		return (EAttribute)lawFitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLawFit_ToStretch() {
		return (EAttribute)lawFitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLawFit_At() {
		return (EAttribute)lawFitEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLawFit_Recordings() {
		return (EReference)lawFitEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGaugeStudy() {
		return gaugeStudyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGaugeStudy_Code() {
		return (EAttribute)gaugeStudyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGaugeStudy_Title() {
		return (EAttribute)gaugeStudyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGaugeStudy_At() {
		return (EAttribute)gaugeStudyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGaugeStudy_Key() {
		return (EReference)gaugeStudyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGaugeStudy_Instrument() {
		return (EReference)gaugeStudyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGaugeStudy_Tolerance() {
		return (EAttribute)gaugeStudyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGaugeStudy_Cells() {
		return (EReference)gaugeStudyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGaugeCell() {
		return gaugeCellEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGaugeCell_Piece() {
		return (EAttribute)gaugeCellEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGaugeCell_Who() {
		return (EAttribute)gaugeCellEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGaugeCell_Readings() {
		return (EReference)gaugeCellEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSpotMap() {
		return spotMapEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpotMap_Title() {
		return (EAttribute)spotMapEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSpotMap_Picture() {
		return (EReference)spotMapEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpotMap_Sketch() {
		return (EAttribute)spotMapEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSpotMap_Places() {
		return (EReference)spotMapEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSpotPlace() {
		return spotPlaceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpotPlace_Spot() {
		return (EAttribute)spotPlaceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpotPlace_Across() {
		return (EAttribute)spotPlaceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpotPlace_Down() {
		return (EAttribute)spotPlaceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRanking() {
		return rankingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRanking_Code() {
		return (EAttribute)rankingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRanking_Title() {
		return (EAttribute)rankingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRanking_Question() {
		return (EAttribute)rankingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRanking_At() {
		return (EAttribute)rankingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRanking_Blind() {
		return (EAttribute)rankingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRanking_Lists() {
		return (EReference)rankingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRankList() {
		return rankListEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRankList_Who() {
		return (EAttribute)rankListEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRankList_Places() {
		return (EReference)rankListEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRankPlace() {
		return rankPlaceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRankPlace_Specimen() {
		return (EReference)rankPlaceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRankPlace_Rank() {
		return (EAttribute)rankPlaceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAgeingPlan() {
		return ageingPlanEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAgeingPlan_Title() {
		return (EAttribute)ageingPlanEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAgeingPlan_Key() {
		return (EReference)ageingPlanEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAgeingPlan_Specimens() {
		return (EReference)ageingPlanEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAgeingPlan_From() {
		return (EAttribute)ageingPlanEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAgeingPlan_Remind() {
		return (EAttribute)ageingPlanEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAgeingPlan_Points() {
		return (EReference)ageingPlanEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAgeingPoint() {
		return ageingPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAgeingPoint_Days() {
		return (EAttribute)ageingPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAgeingPoint_Window() {
		return (EAttribute)ageingPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAgeingPoint_Skipped() {
		return (EAttribute)ageingPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getOrigin() {
		return originEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getImportance() {
		return importanceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTargetRule() {
		return targetRuleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTrialState() {
		return trialStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStepState() {
		return stepStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPieceKind() {
		return pieceKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCensoring() {
		return censoringEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getKnowledge() {
		return knowledgeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAttachmentKind() {
		return attachmentKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPartRole() {
		return partRoleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAmountBasis() {
		return amountBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPartsOf() {
		return partsOfEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGateWord() {
		return gateWordEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getNoteKind() {
		return noteKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getChannelRole() {
		return channelRoleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getInstant() {
		return instantEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLocalDate() {
		return localDateEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelFactory getModelFactory() {
		return (ModelFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		identifiedEClass = createEClass(IDENTIFIED);
		createEAttribute(identifiedEClass, IDENTIFIED__ID);

		entryEClass = createEClass(ENTRY);
		createEReference(entryEClass, ENTRY__PROVENANCE);
		createEAttribute(entryEClass, ENTRY__NOTE);

		provenanceEClass = createEClass(PROVENANCE);
		createEAttribute(provenanceEClass, PROVENANCE__FEATURE);
		createEAttribute(provenanceEClass, PROVENANCE__ORIGIN);
		createEAttribute(provenanceEClass, PROVENANCE__SOURCE);
		createEAttribute(provenanceEClass, PROVENANCE__UNCERTAINTY);
		createEAttribute(provenanceEClass, PROVENANCE__TYPED_AS);
		createEAttribute(provenanceEClass, PROVENANCE__BY);
		createEAttribute(provenanceEClass, PROVENANCE__AT);

		projectEClass = createEClass(PROJECT);
		createEAttribute(projectEClass, PROJECT__TITLE);
		createEAttribute(projectEClass, PROJECT__JOB);
		createEAttribute(projectEClass, PROJECT__INVENTED);
		createEAttribute(projectEClass, PROJECT__CREATED_AT);
		createEAttribute(projectEClass, PROJECT__WRITTEN_BY);
		createEAttribute(projectEClass, PROJECT__FORMAT_VERSION);
		createEAttribute(projectEClass, PROJECT__JOURNAL_SEQ);
		createEReference(projectEClass, PROJECT__NEEDS);
		createEReference(projectEClass, PROJECT__REFERENCE_PARTS);
		createEReference(projectEClass, PROJECT__TARGET_SHEETS);
		createEReference(projectEClass, PROJECT__GRADES);
		createEReference(projectEClass, PROJECT__INSTRUMENTS);
		createEReference(projectEClass, PROJECT__CONTROL_PIECES);
		createEReference(projectEClass, PROJECT__SESSIONS);
		createEReference(projectEClass, PROJECT__TRIALS);
		createEReference(projectEClass, PROJECT__RECIPES);
		createEReference(projectEClass, PROJECT__ATTACHMENTS);
		createEReference(projectEClass, PROJECT__ACKNOWLEDGEMENTS);
		createEReference(projectEClass, PROJECT__OVERRIDES);
		createEReference(projectEClass, PROJECT__PLUGINS);
		createEReference(projectEClass, PROJECT__MOULDS);
		createEReference(projectEClass, PROJECT__PREMIXES);
		createEReference(projectEClass, PROJECT__BATCHES);
		createEReference(projectEClass, PROJECT__SEARCHES);
		createEAttribute(projectEClass, PROJECT__HOURLY_RATE);
		createEAttribute(projectEClass, PROJECT__CUP_PRICE);
		createEReference(projectEClass, PROJECT__GAUGE_STUDIES);
		createEReference(projectEClass, PROJECT__SPOT_MAPS);
		createEReference(projectEClass, PROJECT__LAW_FITS);
		createEReference(projectEClass, PROJECT__RANKINGS);
		createEReference(projectEClass, PROJECT__AGEING_PLANS);

		pluginUseEClass = createEClass(PLUGIN_USE);
		createEAttribute(pluginUseEClass, PLUGIN_USE__NS_URI);
		createEAttribute(pluginUseEClass, PLUGIN_USE__PLUGIN);
		createEAttribute(pluginUseEClass, PLUGIN_USE__VERSION);

		needEClass = createEClass(NEED);
		createEAttribute(needEClass, NEED__TEXT);
		createEAttribute(needEClass, NEED__IMPORTANCE);

		propertyKeyEClass = createEClass(PROPERTY_KEY);
		createEAttribute(propertyKeyEClass, PROPERTY_KEY__PROPERTY);
		createEAttribute(propertyKeyEClass, PROPERTY_KEY__PIECE_KIND);
		createEAttribute(propertyKeyEClass, PROPERTY_KEY__SPOT);
		createEAttribute(propertyKeyEClass, PROPERTY_KEY__SUPPORT);
		createEAttribute(propertyKeyEClass, PROPERTY_KEY__DWELL);

		targetSheetEClass = createEClass(TARGET_SHEET);
		createEAttribute(targetSheetEClass, TARGET_SHEET__VERSION);
		createEAttribute(targetSheetEClass, TARGET_SHEET__FROZEN_AT);
		createEAttribute(targetSheetEClass, TARGET_SHEET__FROZEN_BY);
		createEAttribute(targetSheetEClass, TARGET_SHEET__REASON);
		createEReference(targetSheetEClass, TARGET_SHEET__TARGETS);

		targetEClass = createEClass(TARGET);
		createEReference(targetEClass, TARGET__KEY);
		createEAttribute(targetEClass, TARGET__RULE);
		createEAttribute(targetEClass, TARGET__LOW);
		createEAttribute(targetEClass, TARGET__HIGH);
		createEAttribute(targetEClass, TARGET__NOMINAL);
		createEAttribute(targetEClass, TARGET__TOLERANCE);
		createEAttribute(targetEClass, TARGET__WEIGHT);
		createEAttribute(targetEClass, TARGET__REJECT_BELOW);
		createEAttribute(targetEClass, TARGET__REJECT_ABOVE);
		createEAttribute(targetEClass, TARGET__ALLOWED_SHARE);

		materialGradeEClass = createEClass(MATERIAL_GRADE);
		createEAttribute(materialGradeEClass, MATERIAL_GRADE__CODE);
		createEAttribute(materialGradeEClass, MATERIAL_GRADE__NAME);
		createEAttribute(materialGradeEClass, MATERIAL_GRADE__FAMILY);
		createEAttribute(materialGradeEClass, MATERIAL_GRADE__ROLE);
		createEAttribute(materialGradeEClass, MATERIAL_GRADE__HAZARDS);
		createEReference(materialGradeEClass, MATERIAL_GRADE__VALUES);
		createEReference(materialGradeEClass, MATERIAL_GRADE__LOTS);
		createEAttribute(materialGradeEClass, MATERIAL_GRADE__PACK_SIZE);

		materialValueEClass = createEClass(MATERIAL_VALUE);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__PROPERTY);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__UNIT);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__SHEET_VALUE);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__SHEET_SOURCE);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__OWN_VALUE);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__OWN_UNCERTAINTY);
		createEAttribute(materialValueEClass, MATERIAL_VALUE__OWN_SOURCE);

		lotEClass = createEClass(LOT);
		createEAttribute(lotEClass, LOT__CODE);
		createEAttribute(lotEClass, LOT__OPENED);
		createEAttribute(lotEClass, LOT__EXPIRES);
		createEAttribute(lotEClass, LOT__PRICE);
		createEAttribute(lotEClass, LOT__AMOUNT);
		createEAttribute(lotEClass, LOT__SHEET_DATE);
		createEAttribute(lotEClass, LOT__SHEET_REVISION);
		createEReference(lotEClass, LOT__VALUES);

		instrumentEClass = createEClass(INSTRUMENT);
		createEAttribute(instrumentEClass, INSTRUMENT__NAME);
		createEAttribute(instrumentEClass, INSTRUMENT__KIND);
		createEAttribute(instrumentEClass, INSTRUMENT__UNIT);
		createEAttribute(instrumentEClass, INSTRUMENT__RESOLUTION);
		createEAttribute(instrumentEClass, INSTRUMENT__ACCURACY);
		createEAttribute(instrumentEClass, INSTRUMENT__SCALE);
		createEAttribute(instrumentEClass, INSTRUMENT__SPREAD);
		createEAttribute(instrumentEClass, INSTRUMENT__SPREAD_FROM);
		createEAttribute(instrumentEClass, INSTRUMENT__CHECKED_ON);
		createEAttribute(instrumentEClass, INSTRUMENT__CHECK_EVERY_DAYS);
		createEAttribute(instrumentEClass, INSTRUMENT__CHECK_NOTE);
		createEReference(instrumentEClass, INSTRUMENT__STUDY);

		sessionEClass = createEClass(SESSION);
		createEAttribute(sessionEClass, SESSION__CODE);
		createEAttribute(sessionEClass, SESSION__AT);
		createEAttribute(sessionEClass, SESSION__ROOM_C);
		createEAttribute(sessionEClass, SESSION__ROOM_RH);
		createEAttribute(sessionEClass, SESSION__WHO);
		createEReference(sessionEClass, SESSION__INSTRUMENTS);
		createEReference(sessionEClass, SESSION__CONTROL_PIECE);
		createEAttribute(sessionEClass, SESSION__CONDITIONING_HOURS);
		createEAttribute(sessionEClass, SESSION__ROOM);

		specimenEClass = createEClass(SPECIMEN);
		createEAttribute(specimenEClass, SPECIMEN__CODE);
		createEAttribute(specimenEClass, SPECIMEN__PIECE_KIND);
		createEAttribute(specimenEClass, SPECIMEN__THICKNESS);
		createEAttribute(specimenEClass, SPECIMEN__MADE_AT);
		createEAttribute(specimenEClass, SPECIMEN__FAILED);
		createEAttribute(specimenEClass, SPECIMEN__FAIL_REASON);
		createEReference(specimenEClass, SPECIMEN__MEASUREMENTS);
		createEReference(specimenEClass, SPECIMEN__RECORDINGS);

		controlPieceEClass = createEClass(CONTROL_PIECE);
		createEAttribute(controlPieceEClass, CONTROL_PIECE__USUAL);
		createEAttribute(controlPieceEClass, CONTROL_PIECE__USUAL_SPREAD);
		createEAttribute(controlPieceEClass, CONTROL_PIECE__USUAL_FROM);

		referencePartEClass = createEClass(REFERENCE_PART);
		createEAttribute(referencePartEClass, REFERENCE_PART__NAME);
		createEAttribute(referencePartEClass, REFERENCE_PART__CONDITION);
		createEAttribute(referencePartEClass, REFERENCE_PART__AGE_YEARS);
		createEReference(referencePartEClass, REFERENCE_PART__PHOTOS);

		partEClass = createEClass(PART);
		createEReference(partEClass, PART__PHOTOS);

		measurementEClass = createEClass(MEASUREMENT);
		createEAttribute(measurementEClass, MEASUREMENT__KIND);
		createEReference(measurementEClass, MEASUREMENT__KEY);
		createEAttribute(measurementEClass, MEASUREMENT__AT);
		createEAttribute(measurementEClass, MEASUREMENT__DELAY_HOURS);
		createEAttribute(measurementEClass, MEASUREMENT__PIECE_C);
		createEAttribute(measurementEClass, MEASUREMENT__KNOWLEDGE);
		createEReference(measurementEClass, MEASUREMENT__SESSION);
		createEReference(measurementEClass, MEASUREMENT__INSTRUMENT);
		createEReference(measurementEClass, MEASUREMENT__READINGS);
		createEReference(measurementEClass, MEASUREMENT__DETAILS);
		createEReference(measurementEClass, MEASUREMENT__RECORDING);

		readingEClass = createEClass(READING);
		createEAttribute(readingEClass, READING__VALUE);
		createEAttribute(readingEClass, READING__CENSORING);
		createEAttribute(readingEClass, READING__YES);
		createEAttribute(readingEClass, READING__AT);
		createEAttribute(readingEClass, READING__TYPED_AS);
		createEAttribute(readingEClass, READING__LEFT_OUT);

		trialEClass = createEClass(TRIAL);
		createEAttribute(trialEClass, TRIAL__CODE);
		createEAttribute(trialEClass, TRIAL__TITLE);
		createEAttribute(trialEClass, TRIAL__IDEA);
		createEAttribute(trialEClass, TRIAL__ROUTE);
		createEReference(trialEClass, TRIAL__BASED_ON);
		createEAttribute(trialEClass, TRIAL__STATE);
		createEAttribute(trialEClass, TRIAL__STATE_REASON);
		createEAttribute(trialEClass, TRIAL__CREATED_AT);
		createEAttribute(trialEClass, TRIAL__MADE_AT);
		createEAttribute(trialEClass, TRIAL__CONCLUSION);
		createEAttribute(trialEClass, TRIAL__COST);
		createEAttribute(trialEClass, TRIAL__HOURS);
		createEReference(trialEClass, TRIAL__STEPS);
		createEReference(trialEClass, TRIAL__PARTS);
		createEReference(trialEClass, TRIAL__CALCULATIONS);
		createEReference(trialEClass, TRIAL__ATTACHMENTS);
		createEAttribute(trialEClass, TRIAL__CONTACT_AT);
		createEAttribute(trialEClass, TRIAL__CUP_LABEL);
		createEReference(trialEClass, TRIAL__MOULD);
		createEReference(trialEClass, TRIAL__NOTES);
		createEReference(trialEClass, TRIAL__DECISIONS);
		createEAttribute(trialEClass, TRIAL__PARTS_WANTED);

		stepEClass = createEClass(STEP);
		createEAttribute(stepEClass, STEP__KIND);
		createEAttribute(stepEClass, STEP__TITLE);
		createEAttribute(stepEClass, STEP__STATE);
		createEAttribute(stepEClass, STEP__UNCONFIRMED);
		createEAttribute(stepEClass, STEP__CONFIRMED_BY);
		createEAttribute(stepEClass, STEP__CONFIRMED_AT);
		createEAttribute(stepEClass, STEP__PLANNED_START);
		createEAttribute(stepEClass, STEP__PLANNED_DURATION);
		createEAttribute(stepEClass, STEP__STARTED_AT);
		createEAttribute(stepEClass, STEP__ENDED_AT);
		createEReference(stepEClass, STEP__SESSION);
		createEReference(stepEClass, STEP__USES);
		createEReference(stepEClass, STEP__DETAILS);
		createEReference(stepEClass, STEP__ATTACHMENTS);

		materialUseEClass = createEClass(MATERIAL_USE);
		createEAttribute(materialUseEClass, MATERIAL_USE__ROLE);
		createEReference(materialUseEClass, MATERIAL_USE__GRADE);
		createEReference(materialUseEClass, MATERIAL_USE__LOT);
		createEAttribute(materialUseEClass, MATERIAL_USE__PLANNED);
		createEReference(materialUseEClass, MATERIAL_USE__WEIGHINGS);
		createEAttribute(materialUseEClass, MATERIAL_USE__PARTS);
		createEAttribute(materialUseEClass, MATERIAL_USE__PARTS_BY);
		createEAttribute(materialUseEClass, MATERIAL_USE__PARTS_OF);
		createEAttribute(materialUseEClass, MATERIAL_USE__MOISTURE);
		createEAttribute(materialUseEClass, MATERIAL_USE__DRIED);
		createEReference(materialUseEClass, MATERIAL_USE__PREMIX);

		weighingEClass = createEClass(WEIGHING);
		createEAttribute(weighingEClass, WEIGHING__GROSS);
		createEAttribute(weighingEClass, WEIGHING__TARE);
		createEAttribute(weighingEClass, WEIGHING__NET);
		createEAttribute(weighingEClass, WEIGHING__AT);
		createEAttribute(weighingEClass, WEIGHING__CORRECTION);
		createEReference(weighingEClass, WEIGHING__INSTRUMENT);

		attachmentEClass = createEClass(ATTACHMENT);
		createEAttribute(attachmentEClass, ATTACHMENT__KIND);
		createEAttribute(attachmentEClass, ATTACHMENT__FILE_NAME);
		createEAttribute(attachmentEClass, ATTACHMENT__PATH);
		createEAttribute(attachmentEClass, ATTACHMENT__SHA256);
		createEAttribute(attachmentEClass, ATTACHMENT__CAPTION);
		createEAttribute(attachmentEClass, ATTACHMENT__ADDED_AT);

		recipeEClass = createEClass(RECIPE);
		createEAttribute(recipeEClass, RECIPE__CODE);
		createEAttribute(recipeEClass, RECIPE__VERSION);
		createEAttribute(recipeEClass, RECIPE__FROZEN_AT);
		createEAttribute(recipeEClass, RECIPE__FROZEN_BY);
		createEAttribute(recipeEClass, RECIPE__LIMITS);
		createEReference(recipeEClass, RECIPE__FROM);
		createEReference(recipeEClass, RECIPE__PLAN);
		createEReference(recipeEClass, RECIPE__MATERIALS);
		createEReference(recipeEClass, RECIPE__AS_MADE);
		createEReference(recipeEClass, RECIPE__TARGETS);
		createEAttribute(recipeEClass, RECIPE__CHANGES);
		createEReference(recipeEClass, RECIPE__SESSIONS);
		createEReference(recipeEClass, RECIPE__INSTRUMENTS);
		createEReference(recipeEClass, RECIPE__PREMIXES);
		createEReference(recipeEClass, RECIPE__ATTACHMENTS);
		createEReference(recipeEClass, RECIPE__MOULD);
		createEAttribute(recipeEClass, RECIPE__TITLE);
		createEAttribute(recipeEClass, RECIPE__JOB);
		createEAttribute(recipeEClass, RECIPE__INVENTED);
		createEReference(recipeEClass, RECIPE__NEEDS);
		createEReference(recipeEClass, RECIPE__REFERENCES);
		createEReference(recipeEClass, RECIPE__OVERRIDES);
		createEReference(recipeEClass, RECIPE__ACKNOWLEDGEMENTS);

		acknowledgementEClass = createEClass(ACKNOWLEDGEMENT);
		createEAttribute(acknowledgementEClass, ACKNOWLEDGEMENT__PROMPT);
		createEReference(acknowledgementEClass, ACKNOWLEDGEMENT__SESSION);
		createEReference(acknowledgementEClass, ACKNOWLEDGEMENT__LOT);
		createEReference(acknowledgementEClass, ACKNOWLEDGEMENT__STEP);
		createEAttribute(acknowledgementEClass, ACKNOWLEDGEMENT__WHO);
		createEAttribute(acknowledgementEClass, ACKNOWLEDGEMENT__AT);
		createEAttribute(acknowledgementEClass, ACKNOWLEDGEMENT__SHEET_DATE);
		createEAttribute(acknowledgementEClass, ACKNOWLEDGEMENT__SHEET_REVISION);

		stopOverrideEClass = createEClass(STOP_OVERRIDE);
		createEAttribute(stopOverrideEClass, STOP_OVERRIDE__RULE);
		createEAttribute(stopOverrideEClass, STOP_OVERRIDE__SUBJECT);
		createEAttribute(stopOverrideEClass, STOP_OVERRIDE__INPUT_HASH);
		createEAttribute(stopOverrideEClass, STOP_OVERRIDE__REASON);
		createEAttribute(stopOverrideEClass, STOP_OVERRIDE__WHO);
		createEAttribute(stopOverrideEClass, STOP_OVERRIDE__AT);

		calculationRunEClass = createEClass(CALCULATION_RUN);
		createEAttribute(calculationRunEClass, CALCULATION_RUN__CALCULATION);
		createEAttribute(calculationRunEClass, CALCULATION_RUN__VERSION);
		createEAttribute(calculationRunEClass, CALCULATION_RUN__PROGRAM_VERSION);
		createEAttribute(calculationRunEClass, CALCULATION_RUN__AT);
		createEReference(calculationRunEClass, CALCULATION_RUN__INPUTS);
		createEReference(calculationRunEClass, CALCULATION_RUN__RESULTS);
		createEAttribute(calculationRunEClass, CALCULATION_RUN__REFUSAL);

		runInputEClass = createEClass(RUN_INPUT);
		createEAttribute(runInputEClass, RUN_INPUT__NAME);
		createEAttribute(runInputEClass, RUN_INPUT__VALUE);
		createEAttribute(runInputEClass, RUN_INPUT__TEXT);
		createEAttribute(runInputEClass, RUN_INPUT__UNIT);
		createEAttribute(runInputEClass, RUN_INPUT__ORIGIN);
		createEAttribute(runInputEClass, RUN_INPUT__BOUND_TO);

		runResultEClass = createEClass(RUN_RESULT);
		createEAttribute(runResultEClass, RUN_RESULT__NAME);
		createEAttribute(runResultEClass, RUN_RESULT__LOW);
		createEAttribute(runResultEClass, RUN_RESULT__LIKELY);
		createEAttribute(runResultEClass, RUN_RESULT__HIGH);
		createEAttribute(runResultEClass, RUN_RESULT__TEXT);
		createEAttribute(runResultEClass, RUN_RESULT__UNIT);
		createEAttribute(runResultEClass, RUN_RESULT__SOURCE);

		benchNoteEClass = createEClass(BENCH_NOTE);
		createEAttribute(benchNoteEClass, BENCH_NOTE__KIND);
		createEAttribute(benchNoteEClass, BENCH_NOTE__AT);
		createEReference(benchNoteEClass, BENCH_NOTE__STEP);
		createEReference(benchNoteEClass, BENCH_NOTE__ATTACHMENT);
		createEAttribute(benchNoteEClass, BENCH_NOTE__SORTED_AT);
		createEAttribute(benchNoteEClass, BENCH_NOTE__SORTED_AS);

		decisionEClass = createEClass(DECISION);
		createEAttribute(decisionEClass, DECISION__WORD);
		createEAttribute(decisionEClass, DECISION__AT);
		createEAttribute(decisionEClass, DECISION__WHO);
		createEAttribute(decisionEClass, DECISION__REASON);
		createEAttribute(decisionEClass, DECISION__OPEN);
		createEReference(decisionEClass, DECISION__STEP);

		mouldEClass = createEClass(MOULD);
		createEAttribute(mouldEClass, MOULD__CODE);
		createEAttribute(mouldEClass, MOULD__NAME);
		createEAttribute(mouldEClass, MOULD__MATERIAL);
		createEAttribute(mouldEClass, MOULD__MADE_ON);
		createEAttribute(mouldEClass, MOULD__CAVITIES);
		createEAttribute(mouldEClass, MOULD__CASTS_BEFORE);
		createEAttribute(mouldEClass, MOULD__CASTS_LIMIT);
		createEAttribute(mouldEClass, MOULD__TURN_MINUTES);
		createEAttribute(mouldEClass, MOULD__PRICE);
		createEReference(mouldEClass, MOULD__CASTS);

		mouldCastEClass = createEClass(MOULD_CAST);
		createEAttribute(mouldCastEClass, MOULD_CAST__AT);
		createEReference(mouldCastEClass, MOULD_CAST__TRIAL);
		createEAttribute(mouldCastEClass, MOULD_CAST__RELEASE);
		createEAttribute(mouldCastEClass, MOULD_CAST__RELEASED_WELL);
		createEAttribute(mouldCastEClass, MOULD_CAST__PARTS);

		premixEClass = createEClass(PREMIX);
		createEAttribute(premixEClass, PREMIX__CODE);
		createEAttribute(premixEClass, PREMIX__TITLE);
		createEAttribute(premixEClass, PREMIX__MADE_AT);
		createEAttribute(premixEClass, PREMIX__RESTED_HOURS);
		createEAttribute(premixEClass, PREMIX__DRIED_C);
		createEAttribute(premixEClass, PREMIX__DRIED_HOURS);
		createEReference(premixEClass, PREMIX__INGREDIENTS);

		batchEClass = createEClass(BATCH);
		createEAttribute(batchEClass, BATCH__CODE);
		createEAttribute(batchEClass, BATCH__TITLE);
		createEReference(batchEClass, BATCH__RECIPE);
		createEAttribute(batchEClass, BATCH__WANTED);
		createEAttribute(batchEClass, BATCH__SPARES);
		createEAttribute(batchEClass, BATCH__CREATED_AT);
		createEAttribute(batchEClass, BATCH__NEEDED_BY);
		createEAttribute(batchEClass, BATCH__CLOSED_AT);
		createEAttribute(batchEClass, BATCH__REJECT_LIMIT);
		createEReference(batchEClass, BATCH__POTS);
		createEAttribute(batchEClass, BATCH__START_AT);

		savedSearchEClass = createEClass(SAVED_SEARCH);
		createEAttribute(savedSearchEClass, SAVED_SEARCH__NAME);
		createEAttribute(savedSearchEClass, SAVED_SEARCH__QUERY);
		createEAttribute(savedSearchEClass, SAVED_SEARCH__SAVED_AT);

		recordingEClass = createEClass(RECORDING);
		createEAttribute(recordingEClass, RECORDING__KIND);
		createEAttribute(recordingEClass, RECORDING__CODE);
		createEAttribute(recordingEClass, RECORDING__TITLE);
		createEAttribute(recordingEClass, RECORDING__AT);
		createEReference(recordingEClass, RECORDING__FILE);
		createEReference(recordingEClass, RECORDING__SESSION);
		createEReference(recordingEClass, RECORDING__INSTRUMENT);
		createEAttribute(recordingEClass, RECORDING__SEPARATOR);
		createEAttribute(recordingEClass, RECORDING__DECIMAL_COMMA);
		createEAttribute(recordingEClass, RECORDING__SKIP_LINES);
		createEAttribute(recordingEClass, RECORDING__CYCLE);
		createEAttribute(recordingEClass, RECORDING__LEFT_OUT);
		createEReference(recordingEClass, RECORDING__CHANNELS);
		createEReference(recordingEClass, RECORDING__MARKS);
		createEReference(recordingEClass, RECORDING__DETAILS);

		recordingChannelEClass = createEClass(RECORDING_CHANNEL);
		createEAttribute(recordingChannelEClass, RECORDING_CHANNEL__ROLE);
		createEAttribute(recordingChannelEClass, RECORDING_CHANNEL__COLUMN);
		createEAttribute(recordingChannelEClass, RECORDING_CHANNEL__NAME);
		createEAttribute(recordingChannelEClass, RECORDING_CHANNEL__UNIT);
		createEAttribute(recordingChannelEClass, RECORDING_CHANNEL__REVERSED);

		recordingMarkEClass = createEClass(RECORDING_MARK);
		createEAttribute(recordingMarkEClass, RECORDING_MARK__NAME);
		createEAttribute(recordingMarkEClass, RECORDING_MARK__POSITION);
		createEAttribute(recordingMarkEClass, RECORDING_MARK__BY_HAND);
		createEAttribute(recordingMarkEClass, RECORDING_MARK__LEFT_OUT);

		lawFitEClass = createEClass(LAW_FIT);
		createEAttribute(lawFitEClass, LAW_FIT__TITLE);
		createEAttribute(lawFitEClass, LAW_FIT__LAW);
		createEAttribute(lawFitEClass, LAW_FIT__WEIGHTING);
		createEAttribute(lawFitEClass, LAW_FIT__FROM_STRETCH);
		createEAttribute(lawFitEClass, LAW_FIT__TO_STRETCH);
		createEAttribute(lawFitEClass, LAW_FIT__AT);
		createEReference(lawFitEClass, LAW_FIT__RECORDINGS);

		gaugeStudyEClass = createEClass(GAUGE_STUDY);
		createEAttribute(gaugeStudyEClass, GAUGE_STUDY__CODE);
		createEAttribute(gaugeStudyEClass, GAUGE_STUDY__TITLE);
		createEAttribute(gaugeStudyEClass, GAUGE_STUDY__AT);
		createEReference(gaugeStudyEClass, GAUGE_STUDY__KEY);
		createEReference(gaugeStudyEClass, GAUGE_STUDY__INSTRUMENT);
		createEAttribute(gaugeStudyEClass, GAUGE_STUDY__TOLERANCE);
		createEReference(gaugeStudyEClass, GAUGE_STUDY__CELLS);

		gaugeCellEClass = createEClass(GAUGE_CELL);
		createEAttribute(gaugeCellEClass, GAUGE_CELL__PIECE);
		createEAttribute(gaugeCellEClass, GAUGE_CELL__WHO);
		createEReference(gaugeCellEClass, GAUGE_CELL__READINGS);

		spotMapEClass = createEClass(SPOT_MAP);
		createEAttribute(spotMapEClass, SPOT_MAP__TITLE);
		createEReference(spotMapEClass, SPOT_MAP__PICTURE);
		createEAttribute(spotMapEClass, SPOT_MAP__SKETCH);
		createEReference(spotMapEClass, SPOT_MAP__PLACES);

		spotPlaceEClass = createEClass(SPOT_PLACE);
		createEAttribute(spotPlaceEClass, SPOT_PLACE__SPOT);
		createEAttribute(spotPlaceEClass, SPOT_PLACE__ACROSS);
		createEAttribute(spotPlaceEClass, SPOT_PLACE__DOWN);

		rankingEClass = createEClass(RANKING);
		createEAttribute(rankingEClass, RANKING__CODE);
		createEAttribute(rankingEClass, RANKING__TITLE);
		createEAttribute(rankingEClass, RANKING__QUESTION);
		createEAttribute(rankingEClass, RANKING__AT);
		createEAttribute(rankingEClass, RANKING__BLIND);
		createEReference(rankingEClass, RANKING__LISTS);

		rankListEClass = createEClass(RANK_LIST);
		createEAttribute(rankListEClass, RANK_LIST__WHO);
		createEReference(rankListEClass, RANK_LIST__PLACES);

		rankPlaceEClass = createEClass(RANK_PLACE);
		createEReference(rankPlaceEClass, RANK_PLACE__SPECIMEN);
		createEAttribute(rankPlaceEClass, RANK_PLACE__RANK);

		ageingPlanEClass = createEClass(AGEING_PLAN);
		createEAttribute(ageingPlanEClass, AGEING_PLAN__TITLE);
		createEReference(ageingPlanEClass, AGEING_PLAN__KEY);
		createEReference(ageingPlanEClass, AGEING_PLAN__SPECIMENS);
		createEAttribute(ageingPlanEClass, AGEING_PLAN__FROM);
		createEAttribute(ageingPlanEClass, AGEING_PLAN__REMIND);
		createEReference(ageingPlanEClass, AGEING_PLAN__POINTS);

		ageingPointEClass = createEClass(AGEING_POINT);
		createEAttribute(ageingPointEClass, AGEING_POINT__DAYS);
		createEAttribute(ageingPointEClass, AGEING_POINT__WINDOW);
		createEAttribute(ageingPointEClass, AGEING_POINT__SKIPPED);

		// Create enums
		originEEnum = createEEnum(ORIGIN);
		importanceEEnum = createEEnum(IMPORTANCE);
		targetRuleEEnum = createEEnum(TARGET_RULE);
		trialStateEEnum = createEEnum(TRIAL_STATE);
		stepStateEEnum = createEEnum(STEP_STATE);
		pieceKindEEnum = createEEnum(PIECE_KIND);
		censoringEEnum = createEEnum(CENSORING);
		knowledgeEEnum = createEEnum(KNOWLEDGE);
		attachmentKindEEnum = createEEnum(ATTACHMENT_KIND);
		partRoleEEnum = createEEnum(PART_ROLE);
		amountBasisEEnum = createEEnum(AMOUNT_BASIS);
		partsOfEEnum = createEEnum(PARTS_OF);
		gateWordEEnum = createEEnum(GATE_WORD);
		noteKindEEnum = createEEnum(NOTE_KIND);
		channelRoleEEnum = createEEnum(CHANNEL_ROLE);

		// Create data types
		instantEDataType = createEDataType(INSTANT);
		localDateEDataType = createEDataType(LOCAL_DATE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		entryEClass.getESuperTypes().add(this.getIdentified());
		projectEClass.getESuperTypes().add(this.getEntry());
		needEClass.getESuperTypes().add(this.getEntry());
		targetSheetEClass.getESuperTypes().add(this.getEntry());
		targetEClass.getESuperTypes().add(this.getEntry());
		materialGradeEClass.getESuperTypes().add(this.getEntry());
		materialValueEClass.getESuperTypes().add(this.getEntry());
		lotEClass.getESuperTypes().add(this.getEntry());
		instrumentEClass.getESuperTypes().add(this.getEntry());
		sessionEClass.getESuperTypes().add(this.getEntry());
		specimenEClass.getESuperTypes().add(this.getEntry());
		controlPieceEClass.getESuperTypes().add(this.getSpecimen());
		referencePartEClass.getESuperTypes().add(this.getSpecimen());
		partEClass.getESuperTypes().add(this.getSpecimen());
		measurementEClass.getESuperTypes().add(this.getEntry());
		trialEClass.getESuperTypes().add(this.getEntry());
		stepEClass.getESuperTypes().add(this.getEntry());
		materialUseEClass.getESuperTypes().add(this.getEntry());
		weighingEClass.getESuperTypes().add(this.getEntry());
		attachmentEClass.getESuperTypes().add(this.getEntry());
		recipeEClass.getESuperTypes().add(this.getEntry());
		acknowledgementEClass.getESuperTypes().add(this.getEntry());
		stopOverrideEClass.getESuperTypes().add(this.getEntry());
		calculationRunEClass.getESuperTypes().add(this.getEntry());
		benchNoteEClass.getESuperTypes().add(this.getEntry());
		decisionEClass.getESuperTypes().add(this.getEntry());
		mouldEClass.getESuperTypes().add(this.getEntry());
		mouldCastEClass.getESuperTypes().add(this.getEntry());
		premixEClass.getESuperTypes().add(this.getEntry());
		batchEClass.getESuperTypes().add(this.getEntry());
		savedSearchEClass.getESuperTypes().add(this.getEntry());
		recordingEClass.getESuperTypes().add(this.getEntry());
		recordingChannelEClass.getESuperTypes().add(this.getEntry());
		recordingMarkEClass.getESuperTypes().add(this.getEntry());
		lawFitEClass.getESuperTypes().add(this.getEntry());
		gaugeStudyEClass.getESuperTypes().add(this.getEntry());
		gaugeCellEClass.getESuperTypes().add(this.getEntry());
		spotMapEClass.getESuperTypes().add(this.getEntry());
		spotPlaceEClass.getESuperTypes().add(this.getEntry());
		rankingEClass.getESuperTypes().add(this.getEntry());
		rankListEClass.getESuperTypes().add(this.getEntry());
		rankPlaceEClass.getESuperTypes().add(this.getEntry());
		ageingPlanEClass.getESuperTypes().add(this.getEntry());
		ageingPointEClass.getESuperTypes().add(this.getEntry());

		// Initialize classes, features, and operations; add parameters
		initEClass(identifiedEClass, Identified.class, "Identified", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIdentified_Id(), ecorePackage.getEString(), "id", null, 0, 1, Identified.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(entryEClass, Entry.class, "Entry", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getEntry_Provenance(), this.getProvenance(), null, "provenance", null, 0, -1, Entry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEntry_Note(), ecorePackage.getEString(), "note", null, 0, 1, Entry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(provenanceEClass, Provenance.class, "Provenance", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProvenance_Feature(), ecorePackage.getEString(), "feature", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProvenance_Origin(), this.getOrigin(), "origin", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProvenance_Source(), ecorePackage.getEString(), "source", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProvenance_Uncertainty(), ecorePackage.getEDoubleObject(), "uncertainty", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProvenance_TypedAs(), ecorePackage.getEString(), "typedAs", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProvenance_By(), ecorePackage.getEString(), "by", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProvenance_At(), this.getInstant(), "at", null, 0, 1, Provenance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(projectEClass, Project.class, "Project", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProject_Title(), ecorePackage.getEString(), "title", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Job(), ecorePackage.getEString(), "job", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Invented(), ecorePackage.getEBoolean(), "invented", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_CreatedAt(), this.getInstant(), "createdAt", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_WrittenBy(), ecorePackage.getEString(), "writtenBy", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_FormatVersion(), ecorePackage.getEInt(), "formatVersion", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_JournalSeq(), ecorePackage.getELong(), "journalSeq", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Needs(), this.getNeed(), null, "needs", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_ReferenceParts(), this.getReferencePart(), null, "referenceParts", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_TargetSheets(), this.getTargetSheet(), null, "targetSheets", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Grades(), this.getMaterialGrade(), null, "grades", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Instruments(), this.getInstrument(), null, "instruments", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_ControlPieces(), this.getControlPiece(), null, "controlPieces", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Sessions(), this.getSession(), null, "sessions", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Trials(), this.getTrial(), null, "trials", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Recipes(), this.getRecipe(), null, "recipes", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Attachments(), this.getAttachment(), null, "attachments", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Acknowledgements(), this.getAcknowledgement(), null, "acknowledgements", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Overrides(), this.getStopOverride(), null, "overrides", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Plugins(), this.getPluginUse(), null, "plugins", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Moulds(), this.getMould(), null, "moulds", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Premixes(), this.getPremix(), null, "premixes", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Batches(), this.getBatch(), null, "batches", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Searches(), this.getSavedSearch(), null, "searches", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_HourlyRate(), ecorePackage.getEDoubleObject(), "hourlyRate", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_CupPrice(), ecorePackage.getEDoubleObject(), "cupPrice", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_GaugeStudies(), this.getGaugeStudy(), null, "gaugeStudies", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_SpotMaps(), this.getSpotMap(), null, "spotMaps", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_LawFits(), this.getLawFit(), null, "lawFits", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Rankings(), this.getRanking(), null, "rankings", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_AgeingPlans(), this.getAgeingPlan(), null, "ageingPlans", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pluginUseEClass, PluginUse.class, "PluginUse", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPluginUse_NsURI(), ecorePackage.getEString(), "nsURI", null, 0, 1, PluginUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPluginUse_Plugin(), ecorePackage.getEString(), "plugin", null, 0, 1, PluginUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPluginUse_Version(), ecorePackage.getEString(), "version", null, 0, 1, PluginUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(needEClass, Need.class, "Need", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNeed_Text(), ecorePackage.getEString(), "text", null, 0, 1, Need.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNeed_Importance(), this.getImportance(), "importance", null, 0, 1, Need.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(propertyKeyEClass, PropertyKey.class, "PropertyKey", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPropertyKey_Property(), ecorePackage.getEString(), "property", null, 0, 1, PropertyKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPropertyKey_PieceKind(), this.getPieceKind(), "pieceKind", null, 0, 1, PropertyKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPropertyKey_Spot(), ecorePackage.getEString(), "spot", null, 0, 1, PropertyKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPropertyKey_Support(), ecorePackage.getEString(), "support", null, 0, 1, PropertyKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPropertyKey_Dwell(), ecorePackage.getEDoubleObject(), "dwell", null, 0, 1, PropertyKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(targetSheetEClass, TargetSheet.class, "TargetSheet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTargetSheet_Version(), ecorePackage.getEInt(), "version", null, 0, 1, TargetSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTargetSheet_FrozenAt(), this.getInstant(), "frozenAt", null, 0, 1, TargetSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTargetSheet_FrozenBy(), ecorePackage.getEString(), "frozenBy", null, 0, 1, TargetSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTargetSheet_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, TargetSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTargetSheet_Targets(), this.getTarget(), null, "targets", null, 0, -1, TargetSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(targetEClass, Target.class, "Target", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getTarget_Key(), this.getPropertyKey(), null, "key", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Rule(), this.getTargetRule(), "rule", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Low(), ecorePackage.getEDoubleObject(), "low", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_High(), ecorePackage.getEDoubleObject(), "high", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Nominal(), ecorePackage.getEDoubleObject(), "nominal", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Tolerance(), ecorePackage.getEDoubleObject(), "tolerance", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Weight(), ecorePackage.getEDoubleObject(), "weight", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_RejectBelow(), ecorePackage.getEDoubleObject(), "rejectBelow", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_RejectAbove(), ecorePackage.getEDoubleObject(), "rejectAbove", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_AllowedShare(), ecorePackage.getEDoubleObject(), "allowedShare", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(materialGradeEClass, MaterialGrade.class, "MaterialGrade", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMaterialGrade_Code(), ecorePackage.getEString(), "code", null, 0, 1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialGrade_Name(), ecorePackage.getEString(), "name", null, 0, 1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialGrade_Family(), ecorePackage.getEString(), "family", null, 0, 1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialGrade_Role(), this.getPartRole(), "role", null, 0, 1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialGrade_Hazards(), ecorePackage.getEString(), "hazards", null, 0, -1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialGrade_Values(), this.getMaterialValue(), null, "values", null, 0, -1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialGrade_Lots(), this.getLot(), null, "lots", null, 0, -1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialGrade_PackSize(), ecorePackage.getEDoubleObject(), "packSize", null, 0, 1, MaterialGrade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(materialValueEClass, MaterialValue.class, "MaterialValue", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMaterialValue_Property(), ecorePackage.getEString(), "property", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialValue_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialValue_SheetValue(), ecorePackage.getEDoubleObject(), "sheetValue", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialValue_SheetSource(), ecorePackage.getEString(), "sheetSource", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialValue_OwnValue(), ecorePackage.getEDoubleObject(), "ownValue", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialValue_OwnUncertainty(), ecorePackage.getEDoubleObject(), "ownUncertainty", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialValue_OwnSource(), ecorePackage.getEString(), "ownSource", null, 0, 1, MaterialValue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lotEClass, Lot.class, "Lot", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLot_Code(), ecorePackage.getEString(), "code", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLot_Opened(), this.getLocalDate(), "opened", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLot_Expires(), this.getLocalDate(), "expires", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLot_Price(), ecorePackage.getEDoubleObject(), "price", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLot_Amount(), ecorePackage.getEDoubleObject(), "amount", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLot_SheetDate(), this.getLocalDate(), "sheetDate", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLot_SheetRevision(), ecorePackage.getEString(), "sheetRevision", null, 0, 1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLot_Values(), this.getMaterialValue(), null, "values", null, 0, -1, Lot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(instrumentEClass, Instrument.class, "Instrument", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getInstrument_Name(), ecorePackage.getEString(), "name", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Resolution(), ecorePackage.getEDoubleObject(), "resolution", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Accuracy(), ecorePackage.getEDoubleObject(), "accuracy", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Scale(), ecorePackage.getEString(), "scale", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Spread(), ecorePackage.getEDoubleObject(), "spread", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_SpreadFrom(), ecorePackage.getEString(), "spreadFrom", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_CheckedOn(), this.getLocalDate(), "checkedOn", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_CheckEveryDays(), ecorePackage.getEDoubleObject(), "checkEveryDays", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_CheckNote(), ecorePackage.getEString(), "checkNote", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getInstrument_Study(), this.getGaugeStudy(), null, "study", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sessionEClass, Session.class, "Session", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSession_Code(), ecorePackage.getEString(), "code", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSession_At(), this.getInstant(), "at", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSession_RoomC(), ecorePackage.getEDoubleObject(), "roomC", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSession_RoomRh(), ecorePackage.getEDoubleObject(), "roomRh", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSession_Who(), ecorePackage.getEString(), "who", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSession_Instruments(), this.getInstrument(), null, "instruments", null, 0, -1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSession_ControlPiece(), this.getControlPiece(), null, "controlPiece", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSession_ConditioningHours(), ecorePackage.getEDoubleObject(), "conditioningHours", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSession_Room(), ecorePackage.getEString(), "room", null, 0, 1, Session.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(specimenEClass, Specimen.class, "Specimen", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSpecimen_Code(), ecorePackage.getEString(), "code", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_PieceKind(), this.getPieceKind(), "pieceKind", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_Thickness(), ecorePackage.getEDoubleObject(), "thickness", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_MadeAt(), this.getInstant(), "madeAt", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_Failed(), ecorePackage.getEBoolean(), "failed", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_FailReason(), ecorePackage.getEString(), "failReason", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSpecimen_Measurements(), this.getMeasurement(), null, "measurements", null, 0, -1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSpecimen_Recordings(), this.getRecording(), null, "recordings", null, 0, -1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(controlPieceEClass, ControlPiece.class, "ControlPiece", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getControlPiece_Usual(), ecorePackage.getEDoubleObject(), "usual", null, 0, 1, ControlPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getControlPiece_UsualSpread(), ecorePackage.getEDoubleObject(), "usualSpread", null, 0, 1, ControlPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getControlPiece_UsualFrom(), ecorePackage.getEString(), "usualFrom", null, 0, 1, ControlPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(referencePartEClass, ReferencePart.class, "ReferencePart", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReferencePart_Name(), ecorePackage.getEString(), "name", null, 0, 1, ReferencePart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReferencePart_Condition(), ecorePackage.getEString(), "condition", null, 0, 1, ReferencePart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReferencePart_AgeYears(), ecorePackage.getEDoubleObject(), "ageYears", null, 0, 1, ReferencePart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getReferencePart_Photos(), this.getAttachment(), null, "photos", null, 0, -1, ReferencePart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(partEClass, Part.class, "Part", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPart_Photos(), this.getAttachment(), null, "photos", null, 0, -1, Part.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(measurementEClass, Measurement.class, "Measurement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMeasurement_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMeasurement_Key(), this.getPropertyKey(), null, "key", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasurement_At(), this.getInstant(), "at", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasurement_DelayHours(), ecorePackage.getEDoubleObject(), "delayHours", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasurement_PieceC(), ecorePackage.getEDoubleObject(), "pieceC", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasurement_Knowledge(), this.getKnowledge(), "knowledge", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMeasurement_Session(), this.getSession(), null, "session", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMeasurement_Instrument(), this.getInstrument(), null, "instrument", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMeasurement_Readings(), this.getReading(), null, "readings", null, 0, -1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMeasurement_Details(), ecorePackage.getEObject(), null, "details", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMeasurement_Recording(), this.getRecording(), null, "recording", null, 0, 1, Measurement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(readingEClass, Reading.class, "Reading", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReading_Value(), ecorePackage.getEDoubleObject(), "value", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Censoring(), this.getCensoring(), "censoring", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Yes(), ecorePackage.getEBooleanObject(), "yes", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_At(), this.getInstant(), "at", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_TypedAs(), ecorePackage.getEString(), "typedAs", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_LeftOut(), ecorePackage.getEString(), "leftOut", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(trialEClass, Trial.class, "Trial", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTrial_Code(), ecorePackage.getEString(), "code", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Title(), ecorePackage.getEString(), "title", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Idea(), ecorePackage.getEString(), "idea", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Route(), ecorePackage.getEString(), "route", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_BasedOn(), this.getTrial(), null, "basedOn", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_State(), this.getTrialState(), "state", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_StateReason(), ecorePackage.getEString(), "stateReason", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_CreatedAt(), this.getInstant(), "createdAt", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_MadeAt(), this.getInstant(), "madeAt", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Conclusion(), ecorePackage.getEString(), "conclusion", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Cost(), ecorePackage.getEDoubleObject(), "cost", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Hours(), ecorePackage.getEDoubleObject(), "hours", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Steps(), this.getStep(), null, "steps", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Parts(), this.getPart(), null, "parts", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Calculations(), this.getCalculationRun(), null, "calculations", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Attachments(), this.getAttachment(), null, "attachments", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_ContactAt(), this.getInstant(), "contactAt", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_CupLabel(), ecorePackage.getEString(), "cupLabel", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Mould(), this.getMould(), null, "mould", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Notes(), this.getBenchNote(), null, "notes", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Decisions(), this.getDecision(), null, "decisions", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_PartsWanted(), ecorePackage.getEIntegerObject(), "partsWanted", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stepEClass, Step.class, "Step", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStep_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_Title(), ecorePackage.getEString(), "title", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_State(), this.getStepState(), "state", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_Unconfirmed(), ecorePackage.getEBoolean(), "unconfirmed", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_ConfirmedBy(), ecorePackage.getEString(), "confirmedBy", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_ConfirmedAt(), this.getInstant(), "confirmedAt", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_PlannedStart(), ecorePackage.getEDoubleObject(), "plannedStart", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_PlannedDuration(), ecorePackage.getEDoubleObject(), "plannedDuration", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_StartedAt(), this.getInstant(), "startedAt", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStep_EndedAt(), this.getInstant(), "endedAt", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStep_Session(), this.getSession(), null, "session", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStep_Uses(), this.getMaterialUse(), null, "uses", null, 0, -1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStep_Details(), ecorePackage.getEObject(), null, "details", null, 0, 1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStep_Attachments(), this.getAttachment(), null, "attachments", null, 0, -1, Step.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(materialUseEClass, MaterialUse.class, "MaterialUse", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMaterialUse_Role(), this.getPartRole(), "role", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialUse_Grade(), this.getMaterialGrade(), null, "grade", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialUse_Lot(), this.getLot(), null, "lot", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialUse_Planned(), ecorePackage.getEDoubleObject(), "planned", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialUse_Weighings(), this.getWeighing(), null, "weighings", null, 0, -1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialUse_Parts(), ecorePackage.getEDoubleObject(), "parts", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialUse_PartsBy(), this.getAmountBasis(), "partsBy", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialUse_PartsOf(), this.getPartsOf(), "partsOf", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialUse_Moisture(), ecorePackage.getEDoubleObject(), "moisture", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterialUse_Dried(), ecorePackage.getEBooleanObject(), "dried", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMaterialUse_Premix(), this.getPremix(), null, "premix", null, 0, 1, MaterialUse.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(weighingEClass, Weighing.class, "Weighing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWeighing_Gross(), ecorePackage.getEDoubleObject(), "gross", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighing_Tare(), ecorePackage.getEDoubleObject(), "tare", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighing_Net(), ecorePackage.getEDoubleObject(), "net", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighing_At(), this.getInstant(), "at", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighing_Correction(), ecorePackage.getEBoolean(), "correction", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWeighing_Instrument(), this.getInstrument(), null, "instrument", null, 0, 1, Weighing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(attachmentEClass, Attachment.class, "Attachment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAttachment_Kind(), this.getAttachmentKind(), "kind", null, 0, 1, Attachment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAttachment_FileName(), ecorePackage.getEString(), "fileName", null, 0, 1, Attachment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAttachment_Path(), ecorePackage.getEString(), "path", null, 0, 1, Attachment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAttachment_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, Attachment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAttachment_Caption(), ecorePackage.getEString(), "caption", null, 0, 1, Attachment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAttachment_AddedAt(), this.getInstant(), "addedAt", null, 0, 1, Attachment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(recipeEClass, Recipe.class, "Recipe", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRecipe_Code(), ecorePackage.getEString(), "code", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_Version(), ecorePackage.getEInt(), "version", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_FrozenAt(), this.getInstant(), "frozenAt", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_FrozenBy(), ecorePackage.getEString(), "frozenBy", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_Limits(), ecorePackage.getEString(), "limits", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_From(), this.getTrial(), null, "from", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Plan(), this.getTrial(), null, "plan", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Materials(), this.getMaterialGrade(), null, "materials", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_AsMade(), this.getTrial(), null, "asMade", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Targets(), this.getTargetSheet(), null, "targets", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_Changes(), ecorePackage.getEString(), "changes", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Sessions(), this.getSession(), null, "sessions", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Instruments(), this.getInstrument(), null, "instruments", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Premixes(), this.getPremix(), null, "premixes", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Attachments(), this.getAttachment(), null, "attachments", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Mould(), this.getMould(), null, "mould", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_Title(), ecorePackage.getEString(), "title", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_Job(), ecorePackage.getEString(), "job", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecipe_Invented(), ecorePackage.getEBoolean(), "invented", null, 0, 1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Needs(), this.getNeed(), null, "needs", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_References(), this.getReferencePart(), null, "references", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Overrides(), this.getStopOverride(), null, "overrides", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecipe_Acknowledgements(), this.getAcknowledgement(), null, "acknowledgements", null, 0, -1, Recipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(acknowledgementEClass, Acknowledgement.class, "Acknowledgement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAcknowledgement_Prompt(), ecorePackage.getEString(), "prompt", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAcknowledgement_Session(), this.getSession(), null, "session", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAcknowledgement_Lot(), this.getLot(), null, "lot", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAcknowledgement_Step(), this.getStep(), null, "step", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcknowledgement_Who(), ecorePackage.getEString(), "who", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcknowledgement_At(), this.getInstant(), "at", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcknowledgement_SheetDate(), this.getLocalDate(), "sheetDate", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcknowledgement_SheetRevision(), ecorePackage.getEString(), "sheetRevision", null, 0, 1, Acknowledgement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stopOverrideEClass, StopOverride.class, "StopOverride", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStopOverride_Rule(), ecorePackage.getEString(), "rule", null, 0, 1, StopOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopOverride_Subject(), ecorePackage.getEString(), "subject", null, 0, 1, StopOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopOverride_InputHash(), ecorePackage.getEString(), "inputHash", null, 0, 1, StopOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopOverride_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, StopOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopOverride_Who(), ecorePackage.getEString(), "who", null, 0, 1, StopOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopOverride_At(), this.getInstant(), "at", null, 0, 1, StopOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(calculationRunEClass, CalculationRun.class, "CalculationRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCalculationRun_Calculation(), ecorePackage.getEString(), "calculation", null, 0, 1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCalculationRun_Version(), ecorePackage.getEString(), "version", null, 0, 1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCalculationRun_ProgramVersion(), ecorePackage.getEString(), "programVersion", null, 0, 1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCalculationRun_At(), this.getInstant(), "at", null, 0, 1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCalculationRun_Inputs(), this.getRunInput(), null, "inputs", null, 0, -1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCalculationRun_Results(), this.getRunResult(), null, "results", null, 0, -1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCalculationRun_Refusal(), ecorePackage.getEString(), "refusal", null, 0, 1, CalculationRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(runInputEClass, RunInput.class, "RunInput", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRunInput_Name(), ecorePackage.getEString(), "name", null, 0, 1, RunInput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunInput_Value(), ecorePackage.getEDoubleObject(), "value", null, 0, 1, RunInput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunInput_Text(), ecorePackage.getEString(), "text", null, 0, 1, RunInput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunInput_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, RunInput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunInput_Origin(), this.getOrigin(), "origin", null, 0, 1, RunInput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunInput_BoundTo(), ecorePackage.getEString(), "boundTo", null, 0, 1, RunInput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(runResultEClass, RunResult.class, "RunResult", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRunResult_Name(), ecorePackage.getEString(), "name", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunResult_Low(), ecorePackage.getEDoubleObject(), "low", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunResult_Likely(), ecorePackage.getEDoubleObject(), "likely", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunResult_High(), ecorePackage.getEDoubleObject(), "high", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunResult_Text(), ecorePackage.getEString(), "text", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunResult_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunResult_Source(), ecorePackage.getEString(), "source", null, 0, 1, RunResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(benchNoteEClass, BenchNote.class, "BenchNote", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBenchNote_Kind(), this.getNoteKind(), "kind", null, 0, 1, BenchNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchNote_At(), this.getInstant(), "at", null, 0, 1, BenchNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBenchNote_Step(), this.getStep(), null, "step", null, 0, 1, BenchNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBenchNote_Attachment(), this.getAttachment(), null, "attachment", null, 0, 1, BenchNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchNote_SortedAt(), this.getInstant(), "sortedAt", null, 0, 1, BenchNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchNote_SortedAs(), ecorePackage.getEString(), "sortedAs", null, 0, 1, BenchNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(decisionEClass, Decision.class, "Decision", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDecision_Word(), this.getGateWord(), "word", null, 0, 1, Decision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDecision_At(), this.getInstant(), "at", null, 0, 1, Decision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDecision_Who(), ecorePackage.getEString(), "who", null, 0, 1, Decision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDecision_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, Decision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDecision_Open(), ecorePackage.getEString(), "open", null, 0, -1, Decision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDecision_Step(), this.getStep(), null, "step", null, 0, 1, Decision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mouldEClass, Mould.class, "Mould", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMould_Code(), ecorePackage.getEString(), "code", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_Name(), ecorePackage.getEString(), "name", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_Material(), ecorePackage.getEString(), "material", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_MadeOn(), this.getLocalDate(), "madeOn", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_Cavities(), ecorePackage.getEIntegerObject(), "cavities", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_CastsBefore(), ecorePackage.getEIntegerObject(), "castsBefore", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_CastsLimit(), ecorePackage.getEIntegerObject(), "castsLimit", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_TurnMinutes(), ecorePackage.getEDoubleObject(), "turnMinutes", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMould_Price(), ecorePackage.getEDoubleObject(), "price", null, 0, 1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMould_Casts(), this.getMouldCast(), null, "casts", null, 0, -1, Mould.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mouldCastEClass, MouldCast.class, "MouldCast", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMouldCast_At(), this.getInstant(), "at", null, 0, 1, MouldCast.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMouldCast_Trial(), this.getTrial(), null, "trial", null, 0, 1, MouldCast.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMouldCast_Release(), ecorePackage.getEString(), "release", null, 0, 1, MouldCast.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMouldCast_ReleasedWell(), ecorePackage.getEBooleanObject(), "releasedWell", null, 0, 1, MouldCast.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMouldCast_Parts(), ecorePackage.getEIntegerObject(), "parts", null, 0, 1, MouldCast.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(premixEClass, Premix.class, "Premix", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPremix_Code(), ecorePackage.getEString(), "code", null, 0, 1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPremix_Title(), ecorePackage.getEString(), "title", null, 0, 1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPremix_MadeAt(), this.getInstant(), "madeAt", null, 0, 1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPremix_RestedHours(), ecorePackage.getEDoubleObject(), "restedHours", null, 0, 1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPremix_DriedC(), ecorePackage.getEDoubleObject(), "driedC", null, 0, 1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPremix_DriedHours(), ecorePackage.getEDoubleObject(), "driedHours", null, 0, 1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPremix_Ingredients(), this.getMaterialUse(), null, "ingredients", null, 0, -1, Premix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(batchEClass, Batch.class, "Batch", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBatch_Code(), ecorePackage.getEString(), "code", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_Title(), ecorePackage.getEString(), "title", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBatch_Recipe(), this.getRecipe(), null, "recipe", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_Wanted(), ecorePackage.getEIntegerObject(), "wanted", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_Spares(), ecorePackage.getEIntegerObject(), "spares", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_CreatedAt(), this.getInstant(), "createdAt", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_NeededBy(), this.getLocalDate(), "neededBy", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_ClosedAt(), this.getInstant(), "closedAt", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_RejectLimit(), ecorePackage.getEIntegerObject(), "rejectLimit", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBatch_Pots(), this.getTrial(), null, "pots", null, 0, -1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatch_StartAt(), this.getInstant(), "startAt", null, 0, 1, Batch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(savedSearchEClass, SavedSearch.class, "SavedSearch", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSavedSearch_Name(), ecorePackage.getEString(), "name", null, 0, 1, SavedSearch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSavedSearch_Query(), ecorePackage.getEString(), "query", null, 0, 1, SavedSearch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSavedSearch_SavedAt(), this.getInstant(), "savedAt", null, 0, 1, SavedSearch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(recordingEClass, Recording.class, "Recording", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRecording_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_Code(), ecorePackage.getEString(), "code", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_Title(), ecorePackage.getEString(), "title", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_At(), this.getInstant(), "at", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecording_File(), this.getAttachment(), null, "file", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecording_Session(), this.getSession(), null, "session", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecording_Instrument(), this.getInstrument(), null, "instrument", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_Separator(), ecorePackage.getEString(), "separator", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_DecimalComma(), ecorePackage.getEBooleanObject(), "decimalComma", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_SkipLines(), ecorePackage.getEIntegerObject(), "skipLines", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_Cycle(), ecorePackage.getEIntegerObject(), "cycle", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecording_LeftOut(), ecorePackage.getEString(), "leftOut", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecording_Channels(), this.getRecordingChannel(), null, "channels", null, 0, -1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecording_Marks(), this.getRecordingMark(), null, "marks", null, 0, -1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRecording_Details(), ecorePackage.getEObject(), null, "details", null, 0, 1, Recording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(recordingChannelEClass, RecordingChannel.class, "RecordingChannel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRecordingChannel_Role(), this.getChannelRole(), "role", null, 0, 1, RecordingChannel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingChannel_Column(), ecorePackage.getEIntegerObject(), "column", null, 0, 1, RecordingChannel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingChannel_Name(), ecorePackage.getEString(), "name", null, 0, 1, RecordingChannel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingChannel_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, RecordingChannel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingChannel_Reversed(), ecorePackage.getEBooleanObject(), "reversed", null, 0, 1, RecordingChannel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(recordingMarkEClass, RecordingMark.class, "RecordingMark", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRecordingMark_Name(), ecorePackage.getEString(), "name", null, 0, 1, RecordingMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingMark_Position(), ecorePackage.getEDoubleObject(), "position", null, 0, 1, RecordingMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingMark_ByHand(), ecorePackage.getEBooleanObject(), "byHand", null, 0, 1, RecordingMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRecordingMark_LeftOut(), ecorePackage.getEString(), "leftOut", null, 0, 1, RecordingMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lawFitEClass, LawFit.class, "LawFit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLawFit_Title(), ecorePackage.getEString(), "title", null, 0, 1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLawFit_Law(), ecorePackage.getEString(), "law", null, 0, 1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLawFit_Weighting(), ecorePackage.getEString(), "weighting", null, 0, 1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLawFit_FromStretch(), ecorePackage.getEDoubleObject(), "fromStretch", null, 0, 1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLawFit_ToStretch(), ecorePackage.getEDoubleObject(), "toStretch", null, 0, 1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLawFit_At(), this.getInstant(), "at", null, 0, 1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLawFit_Recordings(), this.getRecording(), null, "recordings", null, 0, -1, LawFit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(gaugeStudyEClass, GaugeStudy.class, "GaugeStudy", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGaugeStudy_Code(), ecorePackage.getEString(), "code", null, 0, 1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGaugeStudy_Title(), ecorePackage.getEString(), "title", null, 0, 1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGaugeStudy_At(), this.getInstant(), "at", null, 0, 1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGaugeStudy_Key(), this.getPropertyKey(), null, "key", null, 0, 1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGaugeStudy_Instrument(), this.getInstrument(), null, "instrument", null, 0, 1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGaugeStudy_Tolerance(), ecorePackage.getEDoubleObject(), "tolerance", null, 0, 1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGaugeStudy_Cells(), this.getGaugeCell(), null, "cells", null, 0, -1, GaugeStudy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(gaugeCellEClass, GaugeCell.class, "GaugeCell", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGaugeCell_Piece(), ecorePackage.getEString(), "piece", null, 0, 1, GaugeCell.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGaugeCell_Who(), ecorePackage.getEString(), "who", null, 0, 1, GaugeCell.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGaugeCell_Readings(), this.getReading(), null, "readings", null, 0, -1, GaugeCell.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(spotMapEClass, SpotMap.class, "SpotMap", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSpotMap_Title(), ecorePackage.getEString(), "title", null, 0, 1, SpotMap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSpotMap_Picture(), this.getAttachment(), null, "picture", null, 0, 1, SpotMap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpotMap_Sketch(), ecorePackage.getEString(), "sketch", null, 0, 1, SpotMap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSpotMap_Places(), this.getSpotPlace(), null, "places", null, 0, -1, SpotMap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(spotPlaceEClass, SpotPlace.class, "SpotPlace", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSpotPlace_Spot(), ecorePackage.getEString(), "spot", null, 0, 1, SpotPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpotPlace_Across(), ecorePackage.getEDoubleObject(), "across", null, 0, 1, SpotPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpotPlace_Down(), ecorePackage.getEDoubleObject(), "down", null, 0, 1, SpotPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rankingEClass, Ranking.class, "Ranking", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRanking_Code(), ecorePackage.getEString(), "code", null, 0, 1, Ranking.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRanking_Title(), ecorePackage.getEString(), "title", null, 0, 1, Ranking.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRanking_Question(), ecorePackage.getEString(), "question", null, 0, 1, Ranking.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRanking_At(), this.getInstant(), "at", null, 0, 1, Ranking.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRanking_Blind(), ecorePackage.getEBooleanObject(), "blind", null, 0, 1, Ranking.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRanking_Lists(), this.getRankList(), null, "lists", null, 0, -1, Ranking.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rankListEClass, RankList.class, "RankList", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRankList_Who(), ecorePackage.getEString(), "who", null, 0, 1, RankList.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRankList_Places(), this.getRankPlace(), null, "places", null, 0, -1, RankList.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rankPlaceEClass, RankPlace.class, "RankPlace", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRankPlace_Specimen(), this.getSpecimen(), null, "specimen", null, 0, 1, RankPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRankPlace_Rank(), ecorePackage.getEIntegerObject(), "rank", null, 0, 1, RankPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ageingPlanEClass, AgeingPlan.class, "AgeingPlan", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAgeingPlan_Title(), ecorePackage.getEString(), "title", null, 0, 1, AgeingPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAgeingPlan_Key(), this.getPropertyKey(), null, "key", null, 0, 1, AgeingPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAgeingPlan_Specimens(), this.getSpecimen(), null, "specimens", null, 0, -1, AgeingPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAgeingPlan_From(), this.getInstant(), "from", null, 0, 1, AgeingPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAgeingPlan_Remind(), ecorePackage.getEBooleanObject(), "remind", null, 0, 1, AgeingPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAgeingPlan_Points(), this.getAgeingPoint(), null, "points", null, 0, -1, AgeingPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ageingPointEClass, AgeingPoint.class, "AgeingPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAgeingPoint_Days(), ecorePackage.getEDoubleObject(), "days", null, 0, 1, AgeingPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAgeingPoint_Window(), ecorePackage.getEDoubleObject(), "window", null, 0, 1, AgeingPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAgeingPoint_Skipped(), ecorePackage.getEString(), "skipped", null, 0, 1, AgeingPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(originEEnum, Origin.class, "Origin");
		addEEnumLiteral(originEEnum, Origin.UNKNOWN);
		addEEnumLiteral(originEEnum, Origin.TYPED);
		addEEnumLiteral(originEEnum, Origin.MEASURED);
		addEEnumLiteral(originEEnum, Origin.CALCULATED);
		addEEnumLiteral(originEEnum, Origin.SHEET);
		addEEnumLiteral(originEEnum, Origin.ESTIMATED);
		addEEnumLiteral(originEEnum, Origin.COPIED);
		addEEnumLiteral(originEEnum, Origin.ASSUMED);

		initEEnum(importanceEEnum, Importance.class, "Importance");
		addEEnumLiteral(importanceEEnum, Importance.MUST);
		addEEnumLiteral(importanceEEnum, Importance.NICE);

		initEEnum(targetRuleEEnum, TargetRule.class, "TargetRule");
		addEEnumLiteral(targetRuleEEnum, TargetRule.AT_LEAST);
		addEEnumLiteral(targetRuleEEnum, TargetRule.AT_MOST);
		addEEnumLiteral(targetRuleEEnum, TargetRule.BETWEEN);
		addEEnumLiteral(targetRuleEEnum, TargetRule.NOMINAL);
		addEEnumLiteral(targetRuleEEnum, TargetRule.NEVER);
		addEEnumLiteral(targetRuleEEnum, TargetRule.ALWAYS);

		initEEnum(trialStateEEnum, TrialState.class, "TrialState");
		addEEnumLiteral(trialStateEEnum, TrialState.PLANNED);
		addEEnumLiteral(trialStateEEnum, TrialState.MAKING);
		addEEnumLiteral(trialStateEEnum, TrialState.MADE);
		addEEnumLiteral(trialStateEEnum, TrialState.FAILED);
		addEEnumLiteral(trialStateEEnum, TrialState.DISCARDED);

		initEEnum(stepStateEEnum, StepState.class, "StepState");
		addEEnumLiteral(stepStateEEnum, StepState.PLANNED);
		addEEnumLiteral(stepStateEEnum, StepState.RUNNING);
		addEEnumLiteral(stepStateEEnum, StepState.DONE);
		addEEnumLiteral(stepStateEEnum, StepState.SKIPPED);

		initEEnum(pieceKindEEnum, PieceKind.class, "PieceKind");
		addEEnumLiteral(pieceKindEEnum, PieceKind.PART);
		addEEnumLiteral(pieceKindEEnum, PieceKind.TEST_PIECE);
		addEEnumLiteral(pieceKindEEnum, PieceKind.WITNESS_BUTTON);

		initEEnum(censoringEEnum, Censoring.class, "Censoring");
		addEEnumLiteral(censoringEEnum, Censoring.NONE);
		addEEnumLiteral(censoringEEnum, Censoring.MORE_THAN);
		addEEnumLiteral(censoringEEnum, Censoring.LESS_THAN);

		initEEnum(knowledgeEEnum, Knowledge.class, "Knowledge");
		addEEnumLiteral(knowledgeEEnum, Knowledge.MEASURED);
		addEEnumLiteral(knowledgeEEnum, Knowledge.ESTIMATED);
		addEEnumLiteral(knowledgeEEnum, Knowledge.UNKNOWN);

		initEEnum(attachmentKindEEnum, AttachmentKind.class, "AttachmentKind");
		addEEnumLiteral(attachmentKindEEnum, AttachmentKind.PHOTO);
		addEEnumLiteral(attachmentKindEEnum, AttachmentKind.SETTINGS);
		addEEnumLiteral(attachmentKindEEnum, AttachmentKind.DATA_SHEET);
		addEEnumLiteral(attachmentKindEEnum, AttachmentKind.CURVE);
		addEEnumLiteral(attachmentKindEEnum, AttachmentKind.OTHER);

		initEEnum(partRoleEEnum, PartRole.class, "PartRole");
		addEEnumLiteral(partRoleEEnum, PartRole.COMPONENT_A);
		addEEnumLiteral(partRoleEEnum, PartRole.COMPONENT_B);
		addEEnumLiteral(partRoleEEnum, PartRole.SINGLE);
		addEEnumLiteral(partRoleEEnum, PartRole.FILLER);
		addEEnumLiteral(partRoleEEnum, PartRole.PIGMENT);
		addEEnumLiteral(partRoleEEnum, PartRole.PLASTICISER);
		addEEnumLiteral(partRoleEEnum, PartRole.THINNER);
		addEEnumLiteral(partRoleEEnum, PartRole.CATALYST);
		addEEnumLiteral(partRoleEEnum, PartRole.MOULD);
		addEEnumLiteral(partRoleEEnum, PartRole.RELEASE);
		addEEnumLiteral(partRoleEEnum, PartRole.WASH);
		addEEnumLiteral(partRoleEEnum, PartRole.OTHER);
		addEEnumLiteral(partRoleEEnum, PartRole.PREMIX);
		addEEnumLiteral(partRoleEEnum, PartRole.POLYOL);

		initEEnum(amountBasisEEnum, AmountBasis.class, "AmountBasis");
		addEEnumLiteral(amountBasisEEnum, AmountBasis.WEIGHT);
		addEEnumLiteral(amountBasisEEnum, AmountBasis.VOLUME);
		addEEnumLiteral(amountBasisEEnum, AmountBasis.EQUIVALENTS);

		initEEnum(partsOfEEnum, PartsOf.class, "PartsOf");
		addEEnumLiteral(partsOfEEnum, PartsOf.UNSTATED);
		addEEnumLiteral(partsOfEEnum, PartsOf.PER_100_POLYMER);
		addEEnumLiteral(partsOfEEnum, PartsOf.OF_ALL);
		addEEnumLiteral(partsOfEEnum, PartsOf.OF_A);
		addEEnumLiteral(partsOfEEnum, PartsOf.OF_B);

		initEEnum(gateWordEEnum, GateWord.class, "GateWord");
		addEEnumLiteral(gateWordEEnum, GateWord.GO);
		addEEnumLiteral(gateWordEEnum, GateWord.HOLD);
		addEEnumLiteral(gateWordEEnum, GateWord.DUMP);

		initEEnum(noteKindEEnum, NoteKind.class, "NoteKind");
		addEEnumLiteral(noteKindEEnum, NoteKind.NOTE);
		addEEnumLiteral(noteKindEEnum, NoteKind.PHOTO);
		addEEnumLiteral(noteKindEEnum, NoteKind.ODD);

		initEEnum(channelRoleEEnum, ChannelRole.class, "ChannelRole");
		addEEnumLiteral(channelRoleEEnum, ChannelRole.TIME);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.TRAVEL);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.FORCE);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.STRETCH);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.STRAIN);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.STRESS);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.TEMPERATURE);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.MASS);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.HEIGHT);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.SOUND);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.FRAME);
		addEEnumLiteral(channelRoleEEnum, ChannelRole.OTHER);

		// Initialize data types
		initEDataType(instantEDataType, Instant.class, "Instant", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(localDateEDataType, LocalDate.class, "LocalDate", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// urn:flexwright:field
		createUrnflexwrightfieldAnnotations();
	}

	/**
	 * Initializes the annotations for <b>urn:flexwright:field</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createUrnflexwrightfieldAnnotations() {
		String source = "urn:flexwright:field";
		addAnnotation
		  (getProject_Title(),
		   source,
		   new String[] {
			   "label", "Title",
			   "help", "What is being made."
		   });
		addAnnotation
		  (getProject_Job(),
		   source,
		   new String[] {
			   "label", "The job",
			   "help", "The job in the maker\'s words."
		   });
		addAnnotation
		  (getProject_HourlyRate(),
		   source,
		   new String[] {
			   "kind", "MONEY",
			   "unit", "EUR",
			   "min", "0",
			   "max", "100000",
			   "label", "An hour of work",
			   "help", "What an hour at the bench counts, for the cost of a part."
		   });
		addAnnotation
		  (getProject_CupPrice(),
		   source,
		   new String[] {
			   "kind", "MONEY",
			   "unit", "EUR",
			   "min", "0",
			   "max", "100000",
			   "label", "Cups and sticks, a pot",
			   "help", "What is thrown away with each pot: cup, stirrer, gloves."
		   });
		addAnnotation
		  (getNeed_Text(),
		   source,
		   new String[] {
			   "label", "Need"
		   });
		addAnnotation
		  (getNeed_Importance(),
		   source,
		   new String[] {
			   "label", "How much it matters"
		   });
		addAnnotation
		  (getPropertyKey_Property(),
		   source,
		   new String[] {
			   "label", "Property",
			   "help", "Id of the property definition."
		   });
		addAnnotation
		  (getPropertyKey_PieceKind(),
		   source,
		   new String[] {
			   "label", "Piece"
		   });
		addAnnotation
		  (getPropertyKey_Spot(),
		   source,
		   new String[] {
			   "label", "Spot",
			   "help", "Where on the piece."
		   });
		addAnnotation
		  (getPropertyKey_Support(),
		   source,
		   new String[] {
			   "label", "Support",
			   "help", "What the piece rests on."
		   });
		addAnnotation
		  (getPropertyKey_Dwell(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "s",
			   "min", "0",
			   "max", "3600",
			   "label", "Dwell",
			   "help", "Time from contact to reading."
		   });
		addAnnotation
		  (getTargetSheet_Reason(),
		   source,
		   new String[] {
			   "label", "Why this version",
			   "help", "What changed against the version before."
		   });
		addAnnotation
		  (getTarget_Rule(),
		   source,
		   new String[] {
			   "label", "Rule"
		   });
		addAnnotation
		  (getTarget_Low(),
		   source,
		   new String[] {
			   "label", "At least",
			   "help", "In the property\'s unit."
		   });
		addAnnotation
		  (getTarget_High(),
		   source,
		   new String[] {
			   "label", "At most",
			   "help", "In the property\'s unit."
		   });
		addAnnotation
		  (getTarget_Nominal(),
		   source,
		   new String[] {
			   "label", "Nominal"
		   });
		addAnnotation
		  (getTarget_Tolerance(),
		   source,
		   new String[] {
			   "min", "0",
			   "label", "\u00b1 Tolerance"
		   });
		addAnnotation
		  (getTarget_Weight(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "0",
			   "max", "10",
			   "label", "Weight",
			   "def", "1"
		   });
		addAnnotation
		  (getTarget_RejectBelow(),
		   source,
		   new String[] {
			   "label", "Reject below",
			   "help", "A part below this is no part."
		   });
		addAnnotation
		  (getTarget_RejectAbove(),
		   source,
		   new String[] {
			   "label", "Reject above",
			   "help", "A part above this is no part."
		   });
		addAnnotation
		  (getTarget_AllowedShare(),
		   source,
		   new String[] {
			   "kind", "FRACTION",
			   "unit", "%",
			   "min", "0",
			   "max", "100",
			   "label", "Allowed share",
			   "help", "For never and always: the share of exceptions that may be; empty means none seen."
		   });
		addAnnotation
		  (getMaterialGrade_Code(),
		   source,
		   new String[] {
			   "label", "Code"
		   });
		addAnnotation
		  (getMaterialGrade_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getMaterialGrade_Family(),
		   source,
		   new String[] {
			   "label", "Family",
			   "help", "Id of the material family."
		   });
		addAnnotation
		  (getMaterialGrade_Role(),
		   source,
		   new String[] {
			   "label", "Role"
		   });
		addAnnotation
		  (getMaterialGrade_Hazards(),
		   source,
		   new String[] {
			   "label", "Hazard statements on its sheet",
			   "help", "H codes the maker read on the sheet."
		   });
		addAnnotation
		  (getMaterialGrade_PackSize(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "1000000",
			   "minOpen", "true",
			   "label", "Sold in packs of",
			   "help", "The smallest amount that can be bought."
		   });
		addAnnotation
		  (getMaterialValue_Property(),
		   source,
		   new String[] {
			   "label", "Property"
		   });
		addAnnotation
		  (getMaterialValue_SheetValue(),
		   source,
		   new String[] {
			   "label", "Sheet value"
		   });
		addAnnotation
		  (getMaterialValue_SheetSource(),
		   source,
		   new String[] {
			   "label", "Source"
		   });
		addAnnotation
		  (getMaterialValue_OwnValue(),
		   source,
		   new String[] {
			   "label", "Own value"
		   });
		addAnnotation
		  (getMaterialValue_OwnUncertainty(),
		   source,
		   new String[] {
			   "label", "\u00b1"
		   });
		addAnnotation
		  (getMaterialValue_OwnSource(),
		   source,
		   new String[] {
			   "label", "How measured"
		   });
		addAnnotation
		  (getLot_Code(),
		   source,
		   new String[] {
			   "label", "Lot"
		   });
		addAnnotation
		  (getLot_Opened(),
		   source,
		   new String[] {
			   "label", "Opened"
		   });
		addAnnotation
		  (getLot_Expires(),
		   source,
		   new String[] {
			   "label", "Expires"
		   });
		addAnnotation
		  (getLot_Price(),
		   source,
		   new String[] {
			   "kind", "MONEY",
			   "unit", "EUR",
			   "min", "0",
			   "max", "100000",
			   "label", "Price"
		   });
		addAnnotation
		  (getLot_Amount(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "1000000",
			   "label", "Amount bought"
		   });
		addAnnotation
		  (getLot_SheetDate(),
		   source,
		   new String[] {
			   "label", "Data sheet dated"
		   });
		addAnnotation
		  (getLot_SheetRevision(),
		   source,
		   new String[] {
			   "label", "Data sheet revision"
		   });
		addAnnotation
		  (getInstrument_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getInstrument_Kind(),
		   source,
		   new String[] {
			   "label", "Kind",
			   "help", "durometer, balance, force gauge, calliper, stopwatch, camera..."
		   });
		addAnnotation
		  (getInstrument_Resolution(),
		   source,
		   new String[] {
			   "min", "0",
			   "label", "Resolution",
			   "help", "One step of the display."
		   });
		addAnnotation
		  (getInstrument_Accuracy(),
		   source,
		   new String[] {
			   "min", "0",
			   "label", "Accuracy",
			   "help", "Half width given by its maker or check, in its unit."
		   });
		addAnnotation
		  (getInstrument_Scale(),
		   source,
		   new String[] {
			   "label", "Scale",
			   "help", "Which scale it reads, such as Shore A, D or 00; empty when it has none."
		   });
		addAnnotation
		  (getInstrument_Spread(),
		   source,
		   new String[] {
			   "min", "0",
			   "label", "Own spread",
			   "help", "Standard deviation of its readings on one piece by one person, in its unit."
		   });
		addAnnotation
		  (getInstrument_SpreadFrom(),
		   source,
		   new String[] {
			   "label", "Spread known from",
			   "help", "Where the spread comes from: a gauge study, a certificate, experience."
		   });
		addAnnotation
		  (getInstrument_CheckedOn(),
		   source,
		   new String[] {
			   "label", "Last checked",
			   "help", "Date of the last check against something known."
		   });
		addAnnotation
		  (getInstrument_CheckEveryDays(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "d",
			   "min", "0",
			   "max", "36500",
			   "label", "Check every",
			   "help", "How long a check holds."
		   });
		addAnnotation
		  (getInstrument_CheckNote(),
		   source,
		   new String[] {
			   "label", "Check",
			   "help", "Against what it was checked and what it read."
		   });
		addAnnotation
		  (getSession_Code(),
		   source,
		   new String[] {
			   "label", "Session"
		   });
		addAnnotation
		  (getSession_At(),
		   source,
		   new String[] {
			   "label", "Date"
		   });
		addAnnotation
		  (getSession_RoomC(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-20",
			   "max", "60",
			   "label", "Room temperature"
		   });
		addAnnotation
		  (getSession_RoomRh(),
		   source,
		   new String[] {
			   "kind", "HUMIDITY",
			   "unit", "%RH",
			   "min", "0",
			   "max", "100",
			   "label", "Room humidity"
		   });
		addAnnotation
		  (getSession_Who(),
		   source,
		   new String[] {
			   "label", "Who"
		   });
		addAnnotation
		  (getSession_ConditioningHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "100000",
			   "label", "Conditioned for",
			   "help", "How long the pieces lay in this room before the first reading."
		   });
		addAnnotation
		  (getSession_Room(),
		   source,
		   new String[] {
			   "label", "Room",
			   "help", "Room or bench."
		   });
		addAnnotation
		  (getSpecimen_Code(),
		   source,
		   new String[] {
			   "label", "Code"
		   });
		addAnnotation
		  (getSpecimen_PieceKind(),
		   source,
		   new String[] {
			   "label", "Piece"
		   });
		addAnnotation
		  (getSpecimen_Thickness(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "500",
			   "label", "Thickness at the spot"
		   });
		addAnnotation
		  (getSpecimen_MadeAt(),
		   source,
		   new String[] {
			   "label", "Made at",
			   "help", "End of the step its age counts from."
		   });
		addAnnotation
		  (getSpecimen_Failed(),
		   source,
		   new String[] {
			   "label", "Failed",
			   "help", "Torn, split, not filled: counts as no, is absent from means."
		   });
		addAnnotation
		  (getSpecimen_FailReason(),
		   source,
		   new String[] {
			   "label", "Why it failed"
		   });
		addAnnotation
		  (getControlPiece_Usual(),
		   source,
		   new String[] {
			   "label", "Usual reading",
			   "help", "What it reads when all is well, in the unit of its gauge."
		   });
		addAnnotation
		  (getControlPiece_UsualSpread(),
		   source,
		   new String[] {
			   "min", "0",
			   "label", "Usual spread",
			   "help", "Standard deviation of its reading from session to session, in the unit of its gauge."
		   });
		addAnnotation
		  (getControlPiece_UsualFrom(),
		   source,
		   new String[] {
			   "label", "Usual reading known from",
			   "help", "A certificate, its marking, or own sessions."
		   });
		addAnnotation
		  (getReferencePart_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getReferencePart_Condition(),
		   source,
		   new String[] {
			   "label", "Condition",
			   "help", "Worn, swollen, hardened, in which words."
		   });
		addAnnotation
		  (getReferencePart_AgeYears(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "a",
			   "min", "0",
			   "max", "200",
			   "label", "Age"
		   });
		addAnnotation
		  (getMeasurement_At(),
		   source,
		   new String[] {
			   "label", "When"
		   });
		addAnnotation
		  (getMeasurement_DelayHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "label", "Age at test",
			   "help", "Part age when read, when known otherwise than from its made time."
		   });
		addAnnotation
		  (getMeasurement_PieceC(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-40",
			   "max", "150",
			   "label", "Piece temperature"
		   });
		addAnnotation
		  (getMeasurement_Knowledge(),
		   source,
		   new String[] {
			   "label", "Known"
		   });
		addAnnotation
		  (getReading_Value(),
		   source,
		   new String[] {
			   "label", "Reading",
			   "help", "In the property\'s canonical unit."
		   });
		addAnnotation
		  (getReading_Yes(),
		   source,
		   new String[] {
			   "label", "Yes",
			   "help", "For yes/no properties."
		   });
		addAnnotation
		  (getReading_LeftOut(),
		   source,
		   new String[] {
			   "label", "Left out because",
			   "help", "A reading left out stays, with its reason."
		   });
		addAnnotation
		  (getTrial_Code(),
		   source,
		   new String[] {
			   "label", "Trial"
		   });
		addAnnotation
		  (getTrial_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getTrial_Idea(),
		   source,
		   new String[] {
			   "label", "Idea",
			   "help", "What is changed and what is expected."
		   });
		addAnnotation
		  (getTrial_Route(),
		   source,
		   new String[] {
			   "label", "Route",
			   "help", "Id of the process kind."
		   });
		addAnnotation
		  (getTrial_State(),
		   source,
		   new String[] {
			   "label", "State"
		   });
		addAnnotation
		  (getTrial_StateReason(),
		   source,
		   new String[] {
			   "label", "Why",
			   "help", "For failed or discarded."
		   });
		addAnnotation
		  (getTrial_MadeAt(),
		   source,
		   new String[] {
			   "label", "Made at"
		   });
		addAnnotation
		  (getTrial_Conclusion(),
		   source,
		   new String[] {
			   "label", "Conclusion",
			   "help", "One sentence."
		   });
		addAnnotation
		  (getTrial_Cost(),
		   source,
		   new String[] {
			   "kind", "MONEY",
			   "unit", "EUR",
			   "min", "0",
			   "label", "Cost"
		   });
		addAnnotation
		  (getTrial_Hours(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Hours"
		   });
		addAnnotation
		  (getTrial_ContactAt(),
		   source,
		   new String[] {
			   "label", "A met B at",
			   "help", "First contact of the components: zero of the clock."
		   });
		addAnnotation
		  (getTrial_CupLabel(),
		   source,
		   new String[] {
			   "label", "Cup",
			   "help", "What is written on the cup."
		   });
		addAnnotation
		  (getTrial_PartsWanted(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "10000",
			   "label", "Parts wanted",
			   "help", "How many parts it is to give; empty when nobody said."
		   });
		addAnnotation
		  (getStep_Title(),
		   source,
		   new String[] {
			   "label", "Step"
		   });
		addAnnotation
		  (getStep_State(),
		   source,
		   new String[] {
			   "label", "State"
		   });
		addAnnotation
		  (getStep_PlannedStart(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "label", "Planned start",
			   "help", "From first contact of A and B."
		   });
		addAnnotation
		  (getStep_PlannedDuration(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "label", "Planned time"
		   });
		addAnnotation
		  (getStep_StartedAt(),
		   source,
		   new String[] {
			   "label", "Started"
		   });
		addAnnotation
		  (getStep_EndedAt(),
		   source,
		   new String[] {
			   "label", "Ended"
		   });
		addAnnotation
		  (getMaterialUse_Role(),
		   source,
		   new String[] {
			   "label", "Role"
		   });
		addAnnotation
		  (getMaterialUse_Planned(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Planned"
		   });
		addAnnotation
		  (getMaterialUse_Parts(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "100000",
			   "label", "Parts",
			   "help", "Share in the formulation as the maker thinks of it; counted as said in Counted by and Of what."
		   });
		addAnnotation
		  (getMaterialUse_PartsBy(),
		   source,
		   new String[] {
			   "label", "Counted by",
			   "help", "Weight, volume or equivalents."
		   });
		addAnnotation
		  (getMaterialUse_PartsOf(),
		   source,
		   new String[] {
			   "label", "Of what",
			   "help", "What the parts are a share of; for components A and B the ratio between them."
		   });
		addAnnotation
		  (getMaterialUse_Moisture(),
		   source,
		   new String[] {
			   "kind", "FRACTION",
			   "unit", "%",
			   "min", "0",
			   "max", "100",
			   "label", "Water in it",
			   "help", "Water that the material brings along, per cent of its mass."
		   });
		addAnnotation
		  (getMaterialUse_Dried(),
		   source,
		   new String[] {
			   "label", "Dried before use",
			   "help", "Whether it was dried before it was weighed."
		   });
		addAnnotation
		  (getWeighing_Gross(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Gross"
		   });
		addAnnotation
		  (getWeighing_Tare(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Tare"
		   });
		addAnnotation
		  (getWeighing_Net(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Net",
			   "help", "Gross less tare when both are given."
		   });
		addAnnotation
		  (getAttachment_Kind(),
		   source,
		   new String[] {
			   "label", "Kind"
		   });
		addAnnotation
		  (getAttachment_FileName(),
		   source,
		   new String[] {
			   "label", "File"
		   });
		addAnnotation
		  (getAttachment_Caption(),
		   source,
		   new String[] {
			   "label", "Caption"
		   });
		addAnnotation
		  (getRecipe_Code(),
		   source,
		   new String[] {
			   "label", "Recipe"
		   });
		addAnnotation
		  (getRecipe_Limits(),
		   source,
		   new String[] {
			   "label", "Acceptance limits in words"
		   });
		addAnnotation
		  (getRecipe_Changes(),
		   source,
		   new String[] {
			   "label", "What changed",
			   "help", "Difference from the version before, in words."
		   });
		addAnnotation
		  (getAcknowledgement_SheetDate(),
		   source,
		   new String[] {
			   "label", "Data sheet dated"
		   });
		addAnnotation
		  (getAcknowledgement_SheetRevision(),
		   source,
		   new String[] {
			   "label", "Data sheet revision"
		   });
		addAnnotation
		  (getBenchNote_Kind(),
		   source,
		   new String[] {
			   "label", "Kind"
		   });
		addAnnotation
		  (getBenchNote_At(),
		   source,
		   new String[] {
			   "label", "At"
		   });
		addAnnotation
		  (getBenchNote_SortedAt(),
		   source,
		   new String[] {
			   "label", "Sorted out at",
			   "help", "When it was looked at again; empty while it waits."
		   });
		addAnnotation
		  (getBenchNote_SortedAs(),
		   source,
		   new String[] {
			   "label", "Turned out to be",
			   "help", "What it was, in words."
		   });
		addAnnotation
		  (getDecision_Word(),
		   source,
		   new String[] {
			   "label", "Decision"
		   });
		addAnnotation
		  (getDecision_At(),
		   source,
		   new String[] {
			   "label", "At"
		   });
		addAnnotation
		  (getDecision_Who(),
		   source,
		   new String[] {
			   "label", "Who"
		   });
		addAnnotation
		  (getDecision_Reason(),
		   source,
		   new String[] {
			   "label", "Reason",
			   "help", "Needed for dump, and for go against an open point."
		   });
		addAnnotation
		  (getDecision_Open(),
		   source,
		   new String[] {
			   "label", "Open points",
			   "help", "What stood against going on, in words."
		   });
		addAnnotation
		  (getMould_Code(),
		   source,
		   new String[] {
			   "label", "Mould"
		   });
		addAnnotation
		  (getMould_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getMould_Material(),
		   source,
		   new String[] {
			   "label", "Made of"
		   });
		addAnnotation
		  (getMould_MadeOn(),
		   source,
		   new String[] {
			   "label", "Made on"
		   });
		addAnnotation
		  (getMould_Cavities(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "1000",
			   "label", "Cavities",
			   "help", "Parts a cast."
		   });
		addAnnotation
		  (getMould_CastsBefore(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "100000",
			   "label", "Casts before",
			   "help", "Casts made before they were counted here."
		   });
		addAnnotation
		  (getMould_CastsLimit(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "100000",
			   "label", "Own limit",
			   "help", "Casts after which it is to be replaced or looked at closely; own experience."
		   });
		addAnnotation
		  (getMould_TurnMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "100000",
			   "label", "Time to be free again",
			   "help", "From pouring until it can be poured again: cure, demould, cleaning."
		   });
		addAnnotation
		  (getMould_Price(),
		   source,
		   new String[] {
			   "kind", "MONEY",
			   "unit", "EUR",
			   "min", "0",
			   "max", "100000",
			   "label", "Cost"
		   });
		addAnnotation
		  (getMouldCast_At(),
		   source,
		   new String[] {
			   "label", "At"
		   });
		addAnnotation
		  (getMouldCast_Release(),
		   source,
		   new String[] {
			   "label", "Release agent"
		   });
		addAnnotation
		  (getMouldCast_ReleasedWell(),
		   source,
		   new String[] {
			   "label", "Released well",
			   "help", "Whether the parts came out without force or damage."
		   });
		addAnnotation
		  (getMouldCast_Parts(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "1000",
			   "label", "Parts"
		   });
		addAnnotation
		  (getPremix_Code(),
		   source,
		   new String[] {
			   "label", "Premix"
		   });
		addAnnotation
		  (getPremix_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getPremix_MadeAt(),
		   source,
		   new String[] {
			   "label", "Made at"
		   });
		addAnnotation
		  (getPremix_RestedHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Rested"
		   });
		addAnnotation
		  (getPremix_DriedC(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "0",
			   "max", "300",
			   "label", "Dried at"
		   });
		addAnnotation
		  (getPremix_DriedHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "1000",
			   "label", "Dried for"
		   });
		addAnnotation
		  (getBatch_Code(),
		   source,
		   new String[] {
			   "label", "Batch"
		   });
		addAnnotation
		  (getBatch_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getBatch_Wanted(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "100000",
			   "label", "Good parts wanted"
		   });
		addAnnotation
		  (getBatch_Spares(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "100000",
			   "label", "Spares",
			   "help", "Parts made on top, against rejects."
		   });
		addAnnotation
		  (getBatch_CreatedAt(),
		   source,
		   new String[] {
			   "label", "Planned at"
		   });
		addAnnotation
		  (getBatch_NeededBy(),
		   source,
		   new String[] {
			   "label", "Needed by"
		   });
		addAnnotation
		  (getBatch_ClosedAt(),
		   source,
		   new String[] {
			   "label", "Closed at"
		   });
		addAnnotation
		  (getBatch_RejectLimit(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "100000",
			   "label", "Reject limit",
			   "help", "Rejects at which the batch stops to be looked at; agreed beforehand."
		   });
		addAnnotation
		  (getBatch_StartAt(),
		   source,
		   new String[] {
			   "label", "Begins",
			   "help", "When work on it is to begin."
		   });
		addAnnotation
		  (getSavedSearch_Name(),
		   source,
		   new String[] {
			   "label", "Name"
		   });
		addAnnotation
		  (getSavedSearch_Query(),
		   source,
		   new String[] {
			   "label", "Search"
		   });
		addAnnotation
		  (getSavedSearch_SavedAt(),
		   source,
		   new String[] {
			   "label", "Saved at"
		   });
		addAnnotation
		  (getRecording_Kind(),
		   source,
		   new String[] {
			   "label", "Kind",
			   "help", "Id of the recording kind whose details are kept."
		   });
		addAnnotation
		  (getRecording_Code(),
		   source,
		   new String[] {
			   "label", "Recording"
		   });
		addAnnotation
		  (getRecording_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getRecording_At(),
		   source,
		   new String[] {
			   "label", "Recorded at"
		   });
		addAnnotation
		  (getRecording_Separator(),
		   source,
		   new String[] {
			   "label", "Separator",
			   "help", "What stands between two columns: one character, or the words tab or blanks."
		   });
		addAnnotation
		  (getRecording_DecimalComma(),
		   source,
		   new String[] {
			   "label", "Decimal comma",
			   "help", "Whether 2,5 is two and a half."
		   });
		addAnnotation
		  (getRecording_SkipLines(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "100000",
			   "label", "Lines before the figures",
			   "help", "Lines at the top that hold no figures."
		   });
		addAnnotation
		  (getRecording_Cycle(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "1000000",
			   "label", "Cycle",
			   "help", "Which loading of the piece this is; the first one differs from the later ones."
		   });
		addAnnotation
		  (getRecording_LeftOut(),
		   source,
		   new String[] {
			   "label", "Left out because",
			   "help", "Why it does not count; empty when it counts."
		   });
		addAnnotation
		  (getRecordingChannel_Role(),
		   source,
		   new String[] {
			   "label", "Meaning"
		   });
		addAnnotation
		  (getRecordingChannel_Column(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "10000",
			   "label", "Column",
			   "help", "Counted from 1."
		   });
		addAnnotation
		  (getRecordingChannel_Name(),
		   source,
		   new String[] {
			   "label", "Heading",
			   "help", "As it stands in the file."
		   });
		addAnnotation
		  (getRecordingChannel_Unit(),
		   source,
		   new String[] {
			   "label", "Unit",
			   "help", "Unit of the figures in the file."
		   });
		addAnnotation
		  (getRecordingChannel_Reversed(),
		   source,
		   new String[] {
			   "label", "Sign turned",
			   "help", "Whether the sign is to be turned round."
		   });
		addAnnotation
		  (getRecordingMark_Name(),
		   source,
		   new String[] {
			   "label", "Mark"
		   });
		addAnnotation
		  (getRecordingMark_Position(),
		   source,
		   new String[] {
			   "label", "At",
			   "help", "Along the recording, in the unit of its axis: seconds, millimetres."
		   });
		addAnnotation
		  (getRecordingMark_ByHand(),
		   source,
		   new String[] {
			   "label", "Set by hand"
		   });
		addAnnotation
		  (getRecordingMark_LeftOut(),
		   source,
		   new String[] {
			   "label", "Left out because",
			   "help", "Why it does not count; empty when it counts."
		   });
		addAnnotation
		  (getLawFit_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getLawFit_Law(),
		   source,
		   new String[] {
			   "label", "Law",
			   "help", "neo-hooke, mooney-rivlin, yeoh, ogden-1, ogden-2 or ogden-3."
		   });
		addAnnotation
		  (getLawFit_Weighting(),
		   source,
		   new String[] {
			   "label", "Weighting",
			   "help", "Which points count how much."
		   });
		addAnnotation
		  (getLawFit_FromStretch(),
		   source,
		   new String[] {
			   "min", "0.01",
			   "max", "50",
			   "label", "From stretch"
		   });
		addAnnotation
		  (getLawFit_ToStretch(),
		   source,
		   new String[] {
			   "min", "0.01",
			   "max", "50",
			   "label", "To stretch"
		   });
		addAnnotation
		  (getLawFit_At(),
		   source,
		   new String[] {
			   "label", "At"
		   });
		addAnnotation
		  (getGaugeStudy_Code(),
		   source,
		   new String[] {
			   "label", "Gauge study"
		   });
		addAnnotation
		  (getGaugeStudy_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getGaugeStudy_At(),
		   source,
		   new String[] {
			   "label", "At"
		   });
		addAnnotation
		  (getGaugeStudy_Tolerance(),
		   source,
		   new String[] {
			   "min", "0",
			   "minOpen", "true",
			   "label", "Width of the target",
			   "help", "Upper less lower limit the readings are to tell apart, in the unit of the gauge."
		   });
		addAnnotation
		  (getGaugeCell_Piece(),
		   source,
		   new String[] {
			   "label", "Piece"
		   });
		addAnnotation
		  (getGaugeCell_Who(),
		   source,
		   new String[] {
			   "label", "Who"
		   });
		addAnnotation
		  (getSpotMap_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getSpotMap_Sketch(),
		   source,
		   new String[] {
			   "label", "Sketch",
			   "help", "Which drawn outline stands in for a photo: dome-top, dome-side or sheet."
		   });
		addAnnotation
		  (getSpotPlace_Spot(),
		   source,
		   new String[] {
			   "label", "Spot"
		   });
		addAnnotation
		  (getSpotPlace_Across(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "1",
			   "label", "Across",
			   "help", "Share of the width from the left."
		   });
		addAnnotation
		  (getSpotPlace_Down(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "1",
			   "label", "Down",
			   "help", "Share of the height from the top."
		   });
		addAnnotation
		  (getRanking_Code(),
		   source,
		   new String[] {
			   "label", "Ranking"
		   });
		addAnnotation
		  (getRanking_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getRanking_Question(),
		   source,
		   new String[] {
			   "label", "Question",
			   "help", "What they were asked: which feels liveliest, which is hardest to press."
		   });
		addAnnotation
		  (getRanking_At(),
		   source,
		   new String[] {
			   "label", "At"
		   });
		addAnnotation
		  (getRanking_Blind(),
		   source,
		   new String[] {
			   "label", "Blind",
			   "help", "Whether nobody saw which piece was which."
		   });
		addAnnotation
		  (getRankList_Who(),
		   source,
		   new String[] {
			   "label", "Who"
		   });
		addAnnotation
		  (getRankPlace_Rank(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "1000",
			   "label", "Place",
			   "help", "1 is first."
		   });
		addAnnotation
		  (getAgeingPlan_Title(),
		   source,
		   new String[] {
			   "label", "Title"
		   });
		addAnnotation
		  (getAgeingPlan_From(),
		   source,
		   new String[] {
			   "label", "Counted from",
			   "help", "Empty: each piece from when it was made."
		   });
		addAnnotation
		  (getAgeingPlan_Remind(),
		   source,
		   new String[] {
			   "label", "Remind"
		   });
		addAnnotation
		  (getAgeingPoint_Days(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "d",
			   "min", "0",
			   "max", "36500",
			   "label", "Age"
		   });
		addAnnotation
		  (getAgeingPoint_Window(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "d",
			   "min", "0",
			   "max", "3650",
			   "label", "Give or take",
			   "help", "How much earlier or later still counts."
		   });
		addAnnotation
		  (getAgeingPoint_Skipped(),
		   source,
		   new String[] {
			   "label", "Skipped because"
		   });
	}

} //ModelPackageImpl
