namespace Slantwise.Records.Entries.Files;

/// <summary>The columns of a table of entries.</summary>
internal enum EntryColumn
{
    Pupil,
    Task,
    Set,
    Level,
    Prediction,
    Trials,
    Cues,
    Decision,
    Reason,
    Trial1,
    Trial2,
    Trial3,
    Trial4,
    Trial5,
    Trial6,
    Trial7,
    Trial8,
    Trial9,
    Trial10,
}
