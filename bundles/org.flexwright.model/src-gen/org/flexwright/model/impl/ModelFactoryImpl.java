/**
 */
package org.flexwright.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import org.flexwright.model.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelFactoryImpl extends EFactoryImpl implements ModelFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static ModelFactory init() {
		try {
			ModelFactory theModelFactory = (ModelFactory)EPackage.Registry.INSTANCE.getEFactory(ModelPackage.eNS_URI);
			if (theModelFactory != null) {
				return theModelFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new ModelFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case ModelPackage.PROVENANCE: return createProvenance();
			case ModelPackage.PROJECT: return createProject();
			case ModelPackage.PLUGIN_USE: return createPluginUse();
			case ModelPackage.NEED: return createNeed();
			case ModelPackage.PROPERTY_KEY: return createPropertyKey();
			case ModelPackage.TARGET_SHEET: return createTargetSheet();
			case ModelPackage.TARGET: return createTarget();
			case ModelPackage.MATERIAL_GRADE: return createMaterialGrade();
			case ModelPackage.MATERIAL_VALUE: return createMaterialValue();
			case ModelPackage.LOT: return createLot();
			case ModelPackage.INSTRUMENT: return createInstrument();
			case ModelPackage.SESSION: return createSession();
			case ModelPackage.CONTROL_PIECE: return createControlPiece();
			case ModelPackage.REFERENCE_PART: return createReferencePart();
			case ModelPackage.PART: return createPart();
			case ModelPackage.MEASUREMENT: return createMeasurement();
			case ModelPackage.READING: return createReading();
			case ModelPackage.TRIAL: return createTrial();
			case ModelPackage.STEP: return createStep();
			case ModelPackage.MATERIAL_USE: return createMaterialUse();
			case ModelPackage.WEIGHING: return createWeighing();
			case ModelPackage.ATTACHMENT: return createAttachment();
			case ModelPackage.RECIPE: return createRecipe();
			case ModelPackage.ACKNOWLEDGEMENT: return createAcknowledgement();
			case ModelPackage.STOP_OVERRIDE: return createStopOverride();
			case ModelPackage.CALCULATION_RUN: return createCalculationRun();
			case ModelPackage.RUN_INPUT: return createRunInput();
			case ModelPackage.RUN_RESULT: return createRunResult();
			case ModelPackage.BENCH_NOTE: return createBenchNote();
			case ModelPackage.DECISION: return createDecision();
			case ModelPackage.MOULD: return createMould();
			case ModelPackage.MOULD_CAST: return createMouldCast();
			case ModelPackage.PREMIX: return createPremix();
			case ModelPackage.BATCH: return createBatch();
			case ModelPackage.SAVED_SEARCH: return createSavedSearch();
			case ModelPackage.RECORDING: return createRecording();
			case ModelPackage.RECORDING_CHANNEL: return createRecordingChannel();
			case ModelPackage.RECORDING_MARK: return createRecordingMark();
			case ModelPackage.LAW_FIT: return createLawFit();
			case ModelPackage.GAUGE_STUDY: return createGaugeStudy();
			case ModelPackage.GAUGE_CELL: return createGaugeCell();
			case ModelPackage.SPOT_MAP: return createSpotMap();
			case ModelPackage.SPOT_PLACE: return createSpotPlace();
			case ModelPackage.RANKING: return createRanking();
			case ModelPackage.RANK_LIST: return createRankList();
			case ModelPackage.RANK_PLACE: return createRankPlace();
			case ModelPackage.AGEING_PLAN: return createAgeingPlan();
			case ModelPackage.AGEING_POINT: return createAgeingPoint();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case ModelPackage.ORIGIN:
				return createOriginFromString(eDataType, initialValue);
			case ModelPackage.IMPORTANCE:
				return createImportanceFromString(eDataType, initialValue);
			case ModelPackage.TARGET_RULE:
				return createTargetRuleFromString(eDataType, initialValue);
			case ModelPackage.TRIAL_STATE:
				return createTrialStateFromString(eDataType, initialValue);
			case ModelPackage.STEP_STATE:
				return createStepStateFromString(eDataType, initialValue);
			case ModelPackage.PIECE_KIND:
				return createPieceKindFromString(eDataType, initialValue);
			case ModelPackage.CENSORING:
				return createCensoringFromString(eDataType, initialValue);
			case ModelPackage.KNOWLEDGE:
				return createKnowledgeFromString(eDataType, initialValue);
			case ModelPackage.ATTACHMENT_KIND:
				return createAttachmentKindFromString(eDataType, initialValue);
			case ModelPackage.PART_ROLE:
				return createPartRoleFromString(eDataType, initialValue);
			case ModelPackage.AMOUNT_BASIS:
				return createAmountBasisFromString(eDataType, initialValue);
			case ModelPackage.PARTS_OF:
				return createPartsOfFromString(eDataType, initialValue);
			case ModelPackage.GATE_WORD:
				return createGateWordFromString(eDataType, initialValue);
			case ModelPackage.NOTE_KIND:
				return createNoteKindFromString(eDataType, initialValue);
			case ModelPackage.CHANNEL_ROLE:
				return createChannelRoleFromString(eDataType, initialValue);
			case ModelPackage.INSTANT:
				return createInstantFromString(eDataType, initialValue);
			case ModelPackage.LOCAL_DATE:
				return createLocalDateFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case ModelPackage.ORIGIN:
				return convertOriginToString(eDataType, instanceValue);
			case ModelPackage.IMPORTANCE:
				return convertImportanceToString(eDataType, instanceValue);
			case ModelPackage.TARGET_RULE:
				return convertTargetRuleToString(eDataType, instanceValue);
			case ModelPackage.TRIAL_STATE:
				return convertTrialStateToString(eDataType, instanceValue);
			case ModelPackage.STEP_STATE:
				return convertStepStateToString(eDataType, instanceValue);
			case ModelPackage.PIECE_KIND:
				return convertPieceKindToString(eDataType, instanceValue);
			case ModelPackage.CENSORING:
				return convertCensoringToString(eDataType, instanceValue);
			case ModelPackage.KNOWLEDGE:
				return convertKnowledgeToString(eDataType, instanceValue);
			case ModelPackage.ATTACHMENT_KIND:
				return convertAttachmentKindToString(eDataType, instanceValue);
			case ModelPackage.PART_ROLE:
				return convertPartRoleToString(eDataType, instanceValue);
			case ModelPackage.AMOUNT_BASIS:
				return convertAmountBasisToString(eDataType, instanceValue);
			case ModelPackage.PARTS_OF:
				return convertPartsOfToString(eDataType, instanceValue);
			case ModelPackage.GATE_WORD:
				return convertGateWordToString(eDataType, instanceValue);
			case ModelPackage.NOTE_KIND:
				return convertNoteKindToString(eDataType, instanceValue);
			case ModelPackage.CHANNEL_ROLE:
				return convertChannelRoleToString(eDataType, instanceValue);
			case ModelPackage.INSTANT:
				return convertInstantToString(eDataType, instanceValue);
			case ModelPackage.LOCAL_DATE:
				return convertLocalDateToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Provenance createProvenance() {
		ProvenanceImpl provenance = new ProvenanceImpl();
		return provenance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Project createProject() {
		ProjectImpl project = new ProjectImpl();
		return project;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PluginUse createPluginUse() {
		PluginUseImpl pluginUse = new PluginUseImpl();
		return pluginUse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Need createNeed() {
		NeedImpl need = new NeedImpl();
		return need;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PropertyKey createPropertyKey() {
		PropertyKeyImpl propertyKey = new PropertyKeyImpl();
		return propertyKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TargetSheet createTargetSheet() {
		TargetSheetImpl targetSheet = new TargetSheetImpl();
		return targetSheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Target createTarget() {
		TargetImpl target = new TargetImpl();
		return target;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MaterialGrade createMaterialGrade() {
		MaterialGradeImpl materialGrade = new MaterialGradeImpl();
		return materialGrade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MaterialValue createMaterialValue() {
		MaterialValueImpl materialValue = new MaterialValueImpl();
		return materialValue;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lot createLot() {
		LotImpl lot = new LotImpl();
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instrument createInstrument() {
		InstrumentImpl instrument = new InstrumentImpl();
		return instrument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Session createSession() {
		SessionImpl session = new SessionImpl();
		return session;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ControlPiece createControlPiece() {
		ControlPieceImpl controlPiece = new ControlPieceImpl();
		return controlPiece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ReferencePart createReferencePart() {
		ReferencePartImpl referencePart = new ReferencePartImpl();
		return referencePart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Part createPart() {
		PartImpl part = new PartImpl();
		return part;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measurement createMeasurement() {
		MeasurementImpl measurement = new MeasurementImpl();
		return measurement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reading createReading() {
		ReadingImpl reading = new ReadingImpl();
		return reading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial createTrial() {
		TrialImpl trial = new TrialImpl();
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Step createStep() {
		StepImpl step = new StepImpl();
		return step;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MaterialUse createMaterialUse() {
		MaterialUseImpl materialUse = new MaterialUseImpl();
		return materialUse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Weighing createWeighing() {
		WeighingImpl weighing = new WeighingImpl();
		return weighing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Attachment createAttachment() {
		AttachmentImpl attachment = new AttachmentImpl();
		return attachment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Recipe createRecipe() {
		RecipeImpl recipe = new RecipeImpl();
		return recipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Acknowledgement createAcknowledgement() {
		AcknowledgementImpl acknowledgement = new AcknowledgementImpl();
		return acknowledgement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StopOverride createStopOverride() {
		StopOverrideImpl stopOverride = new StopOverrideImpl();
		return stopOverride;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CalculationRun createCalculationRun() {
		CalculationRunImpl calculationRun = new CalculationRunImpl();
		return calculationRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RunInput createRunInput() {
		RunInputImpl runInput = new RunInputImpl();
		return runInput;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RunResult createRunResult() {
		RunResultImpl runResult = new RunResultImpl();
		return runResult;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BenchNote createBenchNote() {
		BenchNoteImpl benchNote = new BenchNoteImpl();
		return benchNote;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Decision createDecision() {
		DecisionImpl decision = new DecisionImpl();
		return decision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mould createMould() {
		MouldImpl mould = new MouldImpl();
		return mould;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MouldCast createMouldCast() {
		MouldCastImpl mouldCast = new MouldCastImpl();
		return mouldCast;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Premix createPremix() {
		PremixImpl premix = new PremixImpl();
		return premix;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Batch createBatch() {
		BatchImpl batch = new BatchImpl();
		return batch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SavedSearch createSavedSearch() {
		SavedSearchImpl savedSearch = new SavedSearchImpl();
		return savedSearch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Recording createRecording() {
		RecordingImpl recording = new RecordingImpl();
		return recording;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RecordingChannel createRecordingChannel() {
		RecordingChannelImpl recordingChannel = new RecordingChannelImpl();
		return recordingChannel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RecordingMark createRecordingMark() {
		RecordingMarkImpl recordingMark = new RecordingMarkImpl();
		return recordingMark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LawFit createLawFit() {
		LawFitImpl lawFit = new LawFitImpl();
		return lawFit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugeStudy createGaugeStudy() {
		GaugeStudyImpl gaugeStudy = new GaugeStudyImpl();
		return gaugeStudy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugeCell createGaugeCell() {
		GaugeCellImpl gaugeCell = new GaugeCellImpl();
		return gaugeCell;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SpotMap createSpotMap() {
		SpotMapImpl spotMap = new SpotMapImpl();
		return spotMap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SpotPlace createSpotPlace() {
		SpotPlaceImpl spotPlace = new SpotPlaceImpl();
		return spotPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ranking createRanking() {
		RankingImpl ranking = new RankingImpl();
		return ranking;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RankList createRankList() {
		RankListImpl rankList = new RankListImpl();
		return rankList;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RankPlace createRankPlace() {
		RankPlaceImpl rankPlace = new RankPlaceImpl();
		return rankPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AgeingPlan createAgeingPlan() {
		AgeingPlanImpl ageingPlan = new AgeingPlanImpl();
		return ageingPlan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AgeingPoint createAgeingPoint() {
		AgeingPointImpl ageingPoint = new AgeingPointImpl();
		return ageingPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Origin createOriginFromString(EDataType eDataType, String initialValue) {
		Origin result = Origin.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOriginToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Importance createImportanceFromString(EDataType eDataType, String initialValue) {
		Importance result = Importance.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertImportanceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TargetRule createTargetRuleFromString(EDataType eDataType, String initialValue) {
		TargetRule result = TargetRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTargetRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TrialState createTrialStateFromString(EDataType eDataType, String initialValue) {
		TrialState result = TrialState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTrialStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StepState createStepStateFromString(EDataType eDataType, String initialValue) {
		StepState result = StepState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStepStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PieceKind createPieceKindFromString(EDataType eDataType, String initialValue) {
		PieceKind result = PieceKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPieceKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Censoring createCensoringFromString(EDataType eDataType, String initialValue) {
		Censoring result = Censoring.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCensoringToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Knowledge createKnowledgeFromString(EDataType eDataType, String initialValue) {
		Knowledge result = Knowledge.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertKnowledgeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AttachmentKind createAttachmentKindFromString(EDataType eDataType, String initialValue) {
		AttachmentKind result = AttachmentKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAttachmentKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PartRole createPartRoleFromString(EDataType eDataType, String initialValue) {
		PartRole result = PartRole.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPartRoleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AmountBasis createAmountBasisFromString(EDataType eDataType, String initialValue) {
		AmountBasis result = AmountBasis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAmountBasisToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PartsOf createPartsOfFromString(EDataType eDataType, String initialValue) {
		PartsOf result = PartsOf.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPartsOfToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GateWord createGateWordFromString(EDataType eDataType, String initialValue) {
		GateWord result = GateWord.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGateWordToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NoteKind createNoteKindFromString(EDataType eDataType, String initialValue) {
		NoteKind result = NoteKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertNoteKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ChannelRole createChannelRoleFromString(EDataType eDataType, String initialValue) {
		ChannelRole result = ChannelRole.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertChannelRoleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createInstant(final String it) {
		return it == null ? null : java.time.Instant.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createInstantFromString(EDataType eDataType, String initialValue) {
		return createInstant(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertInstant(final Instant it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertInstantToString(EDataType eDataType, Object instanceValue) {
		return convertInstant((Instant)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createLocalDate(final String it) {
		return it == null ? null : java.time.LocalDate.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createLocalDateFromString(EDataType eDataType, String initialValue) {
		return createLocalDate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLocalDate(final LocalDate it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLocalDateToString(EDataType eDataType, Object instanceValue) {
		return convertLocalDate((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelPackage getModelPackage() {
		return (ModelPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static ModelPackage getPackage() {
		return ModelPackage.eINSTANCE;
	}

} //ModelFactoryImpl
