using System.Globalization;
using Slantwise.Desk.Pages.Library;

namespace Slantwise.Surface.Tests.Desk.Library;

public sealed class LibraryTextTests
{
    [Fact]
    public void ChangesTo_OneFootBalance_SaysWhatMoves()
    {
        using var _ = new Reader("en");
        var entry = LibraryShelf.Find("one-foot-balance", CultureInfo.CurrentUICulture)!;
        // By hand, from content/tasks/one-foot-balance.json and its English words.
        Assert.Empty(LibraryText.ChangesTo(entry, 0));
        Assert.Equal(["What steadies: “foot lifted, arms wide” instead of “toes on the floor”"], LibraryText.ChangesTo(entry, 1));
        Assert.Equal(["Hold, in seconds: 10 instead of 5"], LibraryText.ChangesTo(entry, 3));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void ChangesTo_EveryLevelOfTheLibrary_NamesOneOrTwoFactorsInWords(string language)
    {
        using var _ = new Reader(language);
        foreach (var entry in LibraryShelf.Of(CultureInfo.CurrentUICulture))
        {
            for (var i = 1; i < entry.Design.Levels.Count; i++)
            {
                var changes = LibraryText.ChangesTo(entry, i);
                Assert.InRange(changes.Count, 1, 2);
                // A factor or value without words would show its key, in camel case.
                Assert.DoesNotMatch("[a-z][A-Z]", string.Join(' ', changes));
            }
        }
    }

    [Fact]
    public void TakesOf_TaskWithABall_NamesIt()
    {
        using var _ = new Reader("en");
        Assert.Equal("No mat; a rope", LibraryText.TakesOf(LibraryShelf.Find("rope-jumping", CultureInfo.CurrentUICulture)!));
        Assert.Equal("1 mat for each pupil", LibraryText.TakesOf(LibraryShelf.Find("v-sit", CultureInfo.CurrentUICulture)!));
        Assert.Equal("No mat", LibraryText.TakesOf(LibraryShelf.Find("one-foot-balance", CultureInfo.CurrentUICulture)!));
    }

    // The page's language for as long as a test reads.
    private sealed class Reader : IDisposable
    {
        private readonly (CultureInfo, CultureInfo) _before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);

        public Reader(string language) => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);

        public void Dispose() => (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = _before;
    }
}
