namespace Slantwise.Host.Studies;

/// <summary>The columns that plain tables may have; each command knows some of them.</summary>
internal enum StudyColumn
{
    Pupil = 1,
    Level,
    Task,
    Dose,
    Measure,
    Order,
    OrderLogits,
    Lesson,
    Success,
    Trials,
    HeldS,
    Predicted,
    Unit,
    Rater,
    Value,
    Time,
    Event,
    Group,
    Outcome,
    Successes,
}
