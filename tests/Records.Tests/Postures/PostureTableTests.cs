using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using Snapshooter.Xunit3;

namespace Slantwise.Records.Tests.Postures;

public sealed class PostureTableTests
{
    [Fact]
    public void Of_Library_MatchesApproved() => Snapshot.Match(PostureTable.Of(PostureLibrary.All));
}
