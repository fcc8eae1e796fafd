namespace Slantwise.Storage.Model;

/// <summary>The kind of an entry's fact. The numbers are kept in databases: never change or reuse one.</summary>
internal enum EntryKind
{
    Presence = 1,
    Choice = 2,
    Prediction = 3,
    Trial = 4,
    CueTick = 5,
    Decision = 6,
    TeacherCheck = 7,
    Visit = 8,
    PhaseMark = 9,
    Withdrawal = 10,
    EngagementScan = 11,
    Note = 12,
}
