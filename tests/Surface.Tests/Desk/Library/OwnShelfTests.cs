using System.Globalization;
using Slantwise.Desk.Pages.Library;
using Slantwise.Records.Tasks.Own;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Desk.Library;

public sealed class OwnShelfTests(DemoFolder demo)
{
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    [Fact]
    public async Task Load_DemoSchool_ShowsItsOwnWordingAndWhatTheLibrarysTaskTakes()
    {
        using var folder = await demo.CopyAsync();
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var school = (await store.ListSchoolsAsync()).Single();
        var first = (await store.ListTasksAsync(school.Id))[0];
        await OwnTask.SaveAsync(store, first with { Name = "Ours" });

        var shelf = await OwnShelf.LoadAsync(store, school.Id, CultureInfo.GetCultureInfo("en"));
        Assert.Equal(6, shelf.Count);
        var own = Assert.Single(shelf, e => e.Words.Name == "Ours");
        Assert.Equal($"/library/{first.Id}", own.Address);
        Assert.All(shelf, e => Assert.True(e.IsOwn));
        Assert.All(shelf, e => Assert.Equal(LibraryNeeds.Of(LibraryShelf.Find(e.Design.Id, Spanish)!), LibraryNeeds.Of(e)));
        // Errors and adaptations come along, and other languages keep their words.
        Assert.NotEmpty(own.Words.Errors);
        Assert.Equal(LibraryShelf.Find(first.Id, Spanish)!.Words.Name, (await OwnShelf.LoadAsync(store, school.Id, Spanish)).Single(e => e.Design.Id == first.Id).Words.Name);
    }
}
