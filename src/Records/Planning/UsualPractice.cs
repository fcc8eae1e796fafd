using Slantwise.Engines.Planning.Practice;

namespace Slantwise.Records.Planning;

/// <summary>A lesson's practice as lesson, sheet and the usual say.</summary>
/// <param name="Plan">The practice.</param>
/// <param name="TalkS">Talk before it ends.</param>
public sealed record UsualPractice(PracticePlan Plan, double TalkS);
