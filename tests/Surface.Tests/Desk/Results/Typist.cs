using System.Globalization;
using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Results;
using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Desk.Results;

/// <summary>Presses keys on a grid as the page's script does: it carries out what <see cref="CellTyping"/> and <see cref="GridLayout"/> say beside each cell.</summary>
internal sealed class Typist
{
    private readonly Recorder _recorder;
    private string _value = "";
    private bool _isWhole;

    public Typist(SheetContent sheet, string language = "en-GB", bool isTimed = false)
    {
        Grid = new(sheet, SampleLesson.Ada, CultureInfo.GetCultureInfo(language));
        for (var task = 1; task <= sheet.Tasks.Count; task++) Grid.SetTimed(task, isTimed);
        _recorder = new(SampleLesson.School.Id, SampleLesson.LessonId, EntrySource.Desk, ResultsSession.DeviceId, new TickingClock(), []);
        Focus(Grid.Layout.Cells[0]);
    }

    public ResultsGrid Grid { get; }

    public List<Entry> Log { get; } = [];

    public GridCell At { get; private set; }

    /// <summary>Keys are single characters, or names in braces: {Enter} {Left} {Right} {Up} {Down} {Back} {Esc} {Undo} {Absent}.</summary>
    public Typist Press(string keys)
    {
        foreach (Match key in Regex.Matches(keys, @"\{\w+\}|.", RegexOptions.Singleline)) PressOne(key.Value);
        return this;
    }

    public Typist Leave()
    {
        Commit();
        return this;
    }

    private void PressOne(string key)
    {
        var layout = Grid.Layout;
        switch (key)
        {
            case "{Enter}": Go(layout.Onward(At)); break;
            case "{Left}": Go(layout.Before(At)); break;
            case "{Right}": Go(layout.After(At)); break;
            case "{Up}": Go(layout.Above(At)); break;
            case "{Down}": Go(layout.Below(At)); break;
            case "{Back}" when _value.Length == 0: Go(layout.Before(At)); break;
            case "{Back}": (_value, _isWhole) = (_isWhole ? "" : _value[..^1], false); break;
            case "{Esc}": Focus(At); break;
            case "{Undo}" when _value != Grid.TextOf(At): Focus(At); break;
            case "{Undo}": Undo(); break;
            case "{Absent}": Commit(); Log.AddRange(Grid.SetAbsent(!Grid.IsAbsent, _recorder).Entries); break;
            case " " when Grid.TypingOf(At).Toggle is { } toggle: Space(toggle.GetValueOrDefault(_value)); break;
            default: Type(key); break;
        }
    }

    private void Type(string text)
    {
        var typing = Grid.TypingOf(At);
        (_value, _isWhole) = (_isWhole ? text : _value + text, false);
        if (_value.Length > typing.LengthLimit) _value = _value[..typing.LengthLimit];
        if (typing.HandsOn.Contains(text.ToLowerInvariant(), StringComparison.Ordinal))
        {
            _value = _value[..^1];
            Commit();
            Focus(At with { Kind = CellKind.Decision, TrialNumber = 0 });
            _isWhole = true;
            Type(text.ToLowerInvariant());
        }
        else if (typing.Advance.Length > 0 && Regex.IsMatch(_value, typing.Advance))
        {
            Go(Grid.Layout.After(At));
        }
    }

    private void Space(string? toggled)
    {
        if (toggled is null)
        {
            Go(Grid.Layout.After(At));
            return;
        }
        _value = toggled;
        Commit();
        Focus(At);
    }

    private void Undo()
    {
        var write = Grid.Undo(_recorder);
        Log.AddRange(write.Entries);
        Focus(write.Cell ?? At);
    }

    private void Go(GridCell? cell)
    {
        Commit();
        Focus(cell ?? At);
    }

    private void Focus(GridCell cell) => (At, _value, _isWhole) = (cell, Grid.TextOf(cell), Grid.TextOf(cell).Length > 0);

    private void Commit()
    {
        if (_value != Grid.TextOf(At)) Log.AddRange(Grid.Write(At, _value, _recorder).Entries);
    }
}
