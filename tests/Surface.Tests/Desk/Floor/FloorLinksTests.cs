using Slantwise.Desk.Pages.Floor;

namespace Slantwise.Surface.Tests.Desk.Floor;

public sealed class FloorLinksTests
{
    private static readonly Uri At = new("http://192.0.2.7:5080/");

    [Fact]
    public void Links_ByWhatTheFloorReads_CarryTheSecretBehindTheHash()
    {
        Assert.Equal("http://192.0.2.7:5080/floor/#join=K7M4QX", FloorLinks.Join(At, "K7M4QX"));
        Assert.Equal("http://192.0.2.7:5080/floor/teacher#ticket=abc", FloorLinks.Teacher(At, "abc"));
        Assert.Equal("http://192.0.2.7:5080/floor/board#ticket=abc&code=K7M4QX", FloorLinks.Board(At, "abc", "K7M4QX"));
    }

    [Theory]
    [InlineData("http://192.0.2.7:5080/", "192.0.2.7:5080/floor")]
    [InlineData("http://gym.local/", "gym.local/floor")]
    // A browser tries http first where nothing is said.
    [InlineData("https://gym.local:5080/", "https://gym.local:5080/floor")]
    public void Typed_AnAddress_IsAsShortAsABrowserTakesIt(string at, string typed) => Assert.Equal(typed, FloorLinks.Typed(new Uri(at)));
}
