using System.Text.Json.Serialization;

namespace Slantwise.Records.Entries;

/// <summary>What an entry says happened. The kinds are these and no others.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(Presence), "presence")]
[JsonDerivedType(typeof(Choice), "choice")]
[JsonDerivedType(typeof(Prediction), "prediction")]
[JsonDerivedType(typeof(Trial), "trial")]
[JsonDerivedType(typeof(CueTick), "cueTick")]
[JsonDerivedType(typeof(Decision), "decision")]
[JsonDerivedType(typeof(TeacherCheck), "teacherCheck")]
[JsonDerivedType(typeof(Visit), "visit")]
[JsonDerivedType(typeof(PhaseMark), "phaseMark")]
[JsonDerivedType(typeof(EngagementScan), "engagementScan")]
[JsonDerivedType(typeof(Note), "note")]
[JsonDerivedType(typeof(Withdrawal), "withdrawal")]
public abstract record EntryFact;
