using CsCheck;
using Slantwise.Desk.Pages.Evidence;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class EntryTokenTests
{
    [Fact]
    public void Read_TokensInARow_AreAllThere() => Gen.Guid.Array[0, 300].Sample(ids =>
    {
        var tokens = EntryToken.Read(string.Concat(ids.Select(EntryToken.Of)));
        Assert.Equal(ids.Select(EntryToken.Of).ToHashSet(), tokens);
        Assert.All(tokens, token => Assert.Equal(token, Uri.EscapeDataString(token)));
    });

    [Fact]
    public void Of_IdsMadeInOneInstant_Differ()
    {
        var now = new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);
        var tokens = Enumerable.Range(0, 1000).Select(_ => EntryToken.Of(Guid.CreateVersion7(now))).ToHashSet();
        Assert.Equal(1000, tokens.Count);
    }

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    public void Read_LessThanAToken_IsEmpty(string text) => Assert.Empty(EntryToken.Read(text));
}
