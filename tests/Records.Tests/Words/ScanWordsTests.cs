using System.Globalization;
using System.Resources;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Sheets;
using Slantwise.Records.Words;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Words;

public sealed class ScanWordsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void EveryRemarkAndDoubt_InEachLanguage_HasWords(string language)
    {
        // Without its parent: a word missing in Spanish must not be found in English.
        var own = new ResourceManager(typeof(ScanWords)).GetResourceSet(language == "en" ? CultureInfo.InvariantCulture : CultureInfo.GetCultureInfo(language), true, false)!;
        Assert.All(Enum.GetNames<ScanRemarkKind>(), key => Assert.False(string.IsNullOrEmpty(own.GetString(key)), key));
        Assert.All(Enum.GetNames<ScanDoubt>().Skip(1), key => Assert.False(string.IsNullOrEmpty(own.GetString("Doubt" + key)), key));
    }

    [Fact]
    public void Languages_OfTheWords_HaveTheSameKeysAndGaps()
    {
        var words = new ResourceManager(typeof(ScanWords));
        var (en, es) = (Of(CultureInfo.InvariantCulture), Of(CultureInfo.GetCultureInfo("es")));
        Assert.Equal(en.Keys.Order(), es.Keys.Order());
        Assert.All(en, word => Assert.Equal(Gaps(word.Value), Gaps(es[word.Key])));

        Dictionary<string, string> Of(CultureInfo culture) => words.GetResourceSet(culture, true, false)!
            .Cast<System.Collections.DictionaryEntry>().ToDictionary(e => (string)e.Key, e => (string)e.Value!);
        static IEnumerable<char> Gaps(string text) => text.Where((c, i) => i > 0 && text[i - 1] == '{').Order();
    }

    [Fact]
    public void Sentence_WithADay_IsWrittenAsTheReaderWritesIt() => Assert.Equal(
        "This sheet belongs to 7B, 03/11/2026: it was not entered here.",
        new ScanRemark(ScanRemarkKind.OtherLesson, "7B", "2026-11-03").Sentence(CultureInfo.GetCultureInfo("en-GB")));

    [Fact]
    public void Words_OfAnItem_SayWhereWhatAndWhy()
    {
        var item = new ScanItem { Question = new SheetField(SheetFieldKind.Predicted, 1, 2), Value = 4, Before = 3, Doubt = ScanDoubt.Differs };
        Assert.Equal("One-foot balance, set 2: Prediction", ScanItemWords.Asks(item, Towers, English));
        Assert.Equal("Entered before: 3. The sheet says: 4. Which holds?", ScanItemWords.Doubts(item, Towers, English));
        Assert.Equal("4 s", ScanItemWords.Says(item, 4, Towers with { Predicts = PredictionKind.HoldS }, English));
        var next = item with { Question = new SheetField(SheetFieldKind.Next, 1, 2) };
        Assert.Equal("easier", ScanItemWords.Says(next, (int)NextLevel.Easier, Towers, English));
        Assert.Equal("nothing", ScanItemWords.Says(next, null, Towers, English));
        // This pupil was offered the first and the third, which are 1 and 2 on paper.
        var level = item with
        {
            Question = new SheetField(SheetFieldKind.Level, 1, 2),
            Fields = [new("Level-1-2-1", Engines.Marks.MarkVerdict.Empty, 0), new("Level-1-2-3", Engines.Marks.MarkVerdict.Empty, 0)],
        };
        Assert.Equal("level 2 (eyes closed)", ScanItemWords.Says(level, 3, Towers, English));
        Assert.Equal("arms crossed", ScanItemWords.Says(level, 2, Towers, English));
    }
}
