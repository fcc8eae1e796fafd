using System.Diagnostics;
using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Slantwise.Bench.Floor.Load;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Records.Floor;
using Slantwise.Storage;
using Slantwise.Storage.Postgres;
using Slantwise.Storage.Sqlite;

// Lessons at once on one published program: tablets that write as pupils do, arrivals that wait for nobody, times from when a batch was due.
// It shares the processors with the program it measures.
var options = LoadOptions.Of(args);
Directory.CreateDirectory(options.Folder);
var databaseFile = Path.Combine(options.Folder, "slantwise.db");
async Task<SchoolStore> OpenAsync() => options.Postgres is { } server
    ? await PostgresStore.OpenAsync(server, TimeProvider.System)
    : await SqliteStore.OpenAsync(databaseFile, TimeProvider.System);

var watch = Stopwatch.StartNew();
InventedSchool school;
await using (var store = await OpenAsync()) school = await InventedSchool.MakeAsync(store, options.LessonCount, options.PupilCount);
Say($"{options.LessonCount} lessons of {options.PupilCount} made and opened in {watch.Elapsed.TotalSeconds:0} s; {File.ReadAllText("/proc/loadavg").Trim()} is the machine's load");
Say($"waiting for the disk after 4 KB takes {FlushMs(options.Folder):0.00} ms (median of 101)");

using var program = await ServedProgram.StartAsync(options);
var (tally, clock) = (new Tally(), Stopwatch.StartNew());
var tablets = new List<Tablet>();
var teachers = new List<(Tablet Phone, FloorLesson Lesson)>();
for (var n = 0; n < school.Lessons.Count; n++)
{
    var (open, pupilIds) = school.Lessons[n];
    // Every school's router has an address of its own, as it would have: on this machine one of 127.0.0.0/8.
    var from = new IPAddress([127, 1, (byte)(n / 250), (byte)(n % 250 + 1)]);
    for (var t = 0; t < options.TabletCount; t++)
        tablets.Add(new Tablet(program.Address, from, open, [.. pupilIds.Where((_, i) => i % options.TabletCount == t)], tally, () => clock.Elapsed.TotalSeconds));
    if (n < options.TeacherCount) teachers.Add((new Tablet(program.Address, from, open, [], tally, () => 0), open));
}
watch.Restart();
await Parallel.ForEachAsync(tablets, new ParallelOptions { MaxDegreeOfParallelism = 16 }, async (tablet, _) => await tablet.JoinAsync(FloorDeviceKind.Station));
Say($"{tablets.Count} tablets joined over HTTP and took their bundles in {watch.Elapsed.TotalSeconds:0.0} s, the program having used {program.ProcessorTime.TotalSeconds:0.0} s of a processor");
var tickets = new FloorTickets(
    DataProtectionProvider.Create(new DirectoryInfo(Path.Combine(options.Folder, "keys")), protection => protection.SetApplicationName("slantwise")), TimeProvider.System);
foreach (var (phone, lesson) in teachers) await phone.JoinAsync(FloorDeviceKind.Teacher, tickets.Of(school.School.Id, lesson.LessonId, FloorDeviceKind.Teacher));

using var end = new CancellationTokenSource();
var listening = tablets.Where((_, i) => i % options.TabletCount < options.ListenerCount).Concat(teachers.Select(t => t.Phone)).ToList();
var streams = listening.Select(t => Task.Run(() => t.ListenAsync(end.Token))).ToList();
var (random, untilS) = (new Random(17), options.WarmS + options.MeasuredS);
var plan = tablets.SelectMany(t => Traffic.Of(t, school.Sheet, untilS, options.RateFactor, random)).OrderBy(b => b.DueS).ToList();
var measured = plan.Where(b => b.DueS >= options.WarmS && b.DueS < untilS).ToList();
await Task.Delay(TimeSpan.FromSeconds(5));
Say($"{streams.Count} streams open ({teachers.Count} of them teachers'); sending {measured.Count / options.MeasuredS:0} batches/s, {measured.Sum(b => b.Facts.Count) / options.MeasuredS:0} entries/s for {options.WarmS:0} + {options.MeasuredS:0} s");

var (used, own) = (TimeSpan.Zero, TimeSpan.Zero);
clock.Restart();
var sending = new Thread(() =>
{
    foreach (var batch in plan)
    {
        while (clock.Elapsed.TotalSeconds < batch.DueS) Thread.Sleep(1);
        batch.Tablet.Offer(batch);
    }
}) { Priority = ThreadPriority.AboveNormal };
sending.Start();
await Task.Delay(TimeSpan.FromSeconds(options.WarmS));
(used, own) = (program.ProcessorTime, Environment.CpuUsage.TotalTime);
for (var s = options.WarmS; s + 10 <= untilS; s += 10)
{
    await Task.Delay(TimeSpan.FromSeconds(Math.Max(0, s + 10 - clock.Elapsed.TotalSeconds)));
    Say($"  {s,4:0} s   {tally.Latencies(s, s + 9)}   {program.MemoryBytes.Now >> 20} MB");
}
(used, own) = (program.ProcessorTime - used, Environment.CpuUsage.TotalTime - own);
sending.Join();
for (var waits = 0; waits < 120 && !tablets.TrueForAll(t => t.IsDone); waits++) await Task.Delay(500);
var (_, most) = program.MemoryBytes;
var late = tablets.Count(t => !t.IsDone);
await end.CancelAsync();
await program.KillAsync();

Say($"in {options.MeasuredS:0} s: {tally.Latencies(options.WarmS, untilS)}");
Say($"troubles: {tally.Troubles}; tablets that still waited a minute later: {late}; heard: {tally.Streams}");
Say($"the program used {used.TotalSeconds:0} s of a processor ({used.TotalSeconds / options.MeasuredS:0.00} processors) and {most >> 20} MB at most; this load {own.TotalSeconds:0} s ({own.TotalSeconds / options.MeasuredS:0.00} processors) of the same {Environment.ProcessorCount}; load {File.ReadAllText("/proc/loadavg").Trim()}");

// After kill -9 the store holds what was acknowledged and nothing else.
var kept = new HashSet<Guid>();
await using (var store = await OpenAsync())
{
    foreach (var (open, _) in school.Lessons) kept.UnionWith((await store.ListEntriesAsync(school.School.Id, open.LessonId)).Select(e => e.Id));
}
var acknowledged = tally.AcknowledgedIds.ToHashSet();
Say($"acknowledged {acknowledged.Count} entries, refused {tally.RefusedIds.Count}; of the acknowledged missing in the store after kill -9: {acknowledged.Except(kept).Count()}; in the store and not acknowledged: {kept.Except(acknowledged).Count()}");
foreach (var tablet in tablets) tablet.Dispose();
return acknowledged.IsSubsetOf(kept) ? 0 : 1;

static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

static double FlushMs(string folder)
{
    var path = Path.Combine(folder, "flush.probe");
    using var file = new FileStream(path, new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write, Options = FileOptions.DeleteOnClose });
    var times = Enumerable.Range(0, 101).Select(_ =>
    {
        var watch = Stopwatch.StartNew();
        file.Write(new byte[4096]);
        file.Flush(flushToDisk: true);
        return watch.Elapsed.TotalMilliseconds;
    }).Order().ToList();
    return times[50];
}
