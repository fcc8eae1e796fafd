using Slantwise.Engines.Statistics.Reach;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>What a look at the reach of levels found.</summary>
/// <param name="Views">One a task; empty while no class is looked at.</param>
/// <param name="ClassName">What the class is called; empty for none.</param>
/// <param name="Band">The band it was found for.</param>
public sealed record ReachAnswer(IReadOnlyList<ReachView> Views, string ClassName, ReachBand Band);
