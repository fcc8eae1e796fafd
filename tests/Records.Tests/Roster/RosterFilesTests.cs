using System.Text;
using Slantwise.Records.Roster;
using Slantwise.Records.Tests.Checks;

namespace Slantwise.Records.Tests.Roster;

public sealed class RosterFilesTests
{
    public static TheoryData<string, string, int?, string?> Bad => new()
    {
        { "", "FileEmpty", null, null },
        { "\n \n", "FileEmpty", null, null },
        { "name,code\nAna,A1\n", "ColumnMissing", null, null },
        { "class\n7B\n", "ColumnMissing", null, null },
        { "class,name,group\n7B,Ana,7B\n", "ColumnTwice", null, null },
        { "class,name\n7B,Ana\n,Ben\n", "FieldMissing", 3, "class" },
        { "class,name,code\n7B,,\n7B,Ana,A1\n", "RowNamesNobody", 2, null },
        { "class,name,code\n7B,Ana,A 1\n", "CodeHasOtherCharacters", 2, "code" },
        { "class,name,code\n7B,Ana,ABCDEFGHIJKLM\n", "FieldTooLong", 2, "code" },
        { "class,name\n7B,Ana\n\n7B,ana\n", "NameTwiceInClass", 4, null },
        { "class,name,code\n7B,Ana,A1\n7B,Ben,a1\n", "PupilNamedTwice", 3, null },
        { "class,name,code,id\n7B,Ana,A1,1\n7B,Ben,A1,2\n", "CodeTwice", 3, null },
        { "class,name,id\n7B,Ana,1\n8A,Ben,1\n", "PupilNamedTwice", 3, null },
        { "class,name\n7B,Ana,extra\n", "RowFieldCount", 2, null },
        { "class,name\n7B\n", "RowFieldCount", 2, null },
        { "class,name\n7B,\"Ana\n7B,Ben\n", "RowQuoteOpen", 2, null },
        { "class,name\n7B,\"An\"a\n", "RowTextAfterQuote", 2, null },
        { "class,name\n7B,A\"na\"\n", "RowQuoteStray", 2, null },
        { "class,name\n7B,An\0a\n", "FileHasControl", 2, null },
    };

    [Fact]
    public void Read_PlainTable_TakesEveryRow()
    {
        var reading = RosterFiles.Read([RosterSamples.File("pupils.csv")]);
        Assert.Empty(reading.Findings);
        Assert.Equal(["7B", "8A"], reading.Classes.Select(c => c.Name));
        Assert.Equal(["Amara", "Bence", "Cyra", "Dov"], reading.Rows.Select(r => r.DisplayName));
        Assert.Equal(["AM1", "BN2", "CY3", "DV4"], reading.Rows.Select(r => r.Code));
        Assert.Equal(("pupils.csv", 5), (reading.Rows[3].Place.File, reading.Rows[3].Place.LineNumber));
    }

    [Fact]
    public void Read_SpanishTable_MakesLabelsAndSaysWhatIsNotKept()
    {
        var reading = RosterFiles.Read([RosterSamples.File("clase.csv")]);
        var unused = Assert.Single(reading.Findings);
        Assert.Equal(("ColumnNotUsed", "correo"), (unused.Key, (string)unused.Arguments[1]));
        Assert.Equal(["Inés O.", "Inés P.", "Teo"], reading.Rows.Select(r => r.DisplayName));
        Assert.DoesNotContain("example.invalid", string.Join(' ', reading.Rows.Select(r => r.ToString())));
        Assert.DoesNotContain("Pardo", string.Join(' ', reading.Rows.Select(r => r.ToString())));
    }

    [Theory]
    [InlineData("Código del alumno,GRUPO\nA1,7B\n")]
    [InlineData("group\tpupil code\n7B\tA1\n")]
    [InlineData("sep=;\nclass;code\n7B;A1\n")]
    [InlineData("\uFEFFClass,Code\r\n7B,A1\r\n,\r\n")]
    [InlineData("class,code\n\"7B\",\"A1\"")]
    public void Read_HeadingsAndSeparators_AreUnderstood(string text)
    {
        var reading = RosterFiles.Read([new("list.csv", text)]);
        Assert.Empty(reading.Findings);
        var row = Assert.Single(reading.Rows);
        Assert.Equal(("7B", "A1"), (row.ClassName, row.Code));
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void Read_BadRow_IsNamedWithItsPlace(string text, string key, int? line, string? column)
    {
        var reading = RosterFiles.Read([new("list.csv", text)]);
        var refused = Assert.Single(reading.Findings, f => f.IsRefused);
        Assert.Equal((key, "list.csv", line, column), (refused.Key, refused.InFile!.File, refused.InFile.LineNumber, refused.InFile.Column));
        Sentences.AreWhole(reading.Findings);
        Assert.DoesNotContain(reading.Rows, r => r.Place.LineNumber == line);
    }

    [Fact]
    public void Read_NoFile_IsRefused() => Assert.Equal("RosterHasNoFile", Assert.Single(RosterFiles.Read([]).Findings).Key);

    [Fact]
    public void Read_SameRowTwice_IsTakenOnce()
    {
        var reading = RosterFiles.Read([new("list.csv", "class,name,code\n7B,Ana,A1\n7B,Ana,A1\n")]);
        Assert.Equal("RowTwice", Assert.Single(reading.Findings).Key);
        Assert.Single(reading.Rows);
    }

    [Fact]
    public void Read_NamesAlike_TakeAsFewLettersAsTellThemApart()
    {
        var reading = RosterFiles.Read([new("list.csv", "class,first name,last name\n7B,Ana,López\n7B,Ana,García\n7B,Ana,Gómez\n7B,Ben,Gómez\n")]);
        Assert.Equal(["Ana L.", "Ana Ga.", "Ana Gó.", "Ben"], reading.Rows.Select(r => r.DisplayName));
    }

    [Fact]
    public void Read_NamesNoLettersTellApart_NeedACode()
    {
        Assert.Equal("NameTwiceInClass", Assert.Single(
            RosterFiles.Read([new("list.csv", "class,first name,last name\n7B,Ana,Garcés\n7B,Ana,García\n")]).Findings).Key);
        var coded = RosterFiles.Read([new("list.csv", "class,code,first name,last name\n7B,A1,Ana,Garcés\n7B,A2,Ana,García\n")]);
        Assert.Equal("LabelShared", Assert.Single(coded.Findings).Key);
        Assert.Equal(["Ana G.", "Ana G."], coded.Rows.Select(r => r.DisplayName));
    }

    [Fact]
    public void Read_OlderSpreadsheetBytes_AreGuessedAndSaid()
    {
        var file = RosterFile.Read("list.csv", Encoding.Latin1.GetBytes("class,name\n7B,Inés\n"));
        var reading = RosterFiles.Read([file]);
        Assert.Equal("Inés", Assert.Single(reading.Rows).DisplayName);
        Assert.Equal("FileEncodingGuessed", Assert.Single(reading.Findings).Key);
    }

    [Fact]
    public void Read_BytesWithTheirMark_AreDecoded()
    {
        const string text = "class,name\n7B,Inés\n";
        foreach (var encoding in (Encoding[])[new UTF8Encoding(true), Encoding.Unicode, Encoding.BigEndianUnicode])
        {
            var file = RosterFile.Read("list.csv", [.. encoding.GetPreamble(), .. encoding.GetBytes(text)]);
            Assert.Equal((text, false), (file.Text, file.IsGuessed));
        }
    }
}
