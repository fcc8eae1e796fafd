using Microsoft.EntityFrameworkCore;
using Slantwise.Records;
using Slantwise.Records.Schools;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

/// <summary>What both databases do alike: one context a call, one transaction a save.</summary>
public abstract partial class SchoolStore : IStore, IAsyncDisposable
{
    private readonly TimeProvider _clock;

    private protected SchoolStore(TimeProvider clock) => _clock = clock;

    /// <inheritdoc/>
    public Task<IReadOnlyList<School>> ListSchoolsAsync(CancellationToken cancel = default) =>
        ListAsync(c => c.Schools, schools => schools.OrderBy(s => s.Name, Names).ThenBy(s => s.Id), cancel);

    /// <inheritdoc/>
    public Task<School?> FindSchoolAsync(Guid schoolId, CancellationToken cancel = default) =>
        FindAsync(c => c.Schools.Where(s => s.Id == schoolId), cancel);

    /// <inheritdoc/>
    public Task SaveSchoolAsync(School school, CancellationToken cancel = default) => SaveAsync(school, cancel);

    /// <inheritdoc/>
    public abstract Task BackupAsync(string file, CancellationToken cancel = default);

    /// <inheritdoc/>
    public abstract Task RestoreAsync(string file, CancellationToken cancel = default);

    /// <summary>Closes the store's connections. What was saved is durable already.</summary>
    public abstract ValueTask DisposeAsync();

    private static StringComparer Names => StringComparer.OrdinalIgnoreCase;

    private protected abstract Task<SchoolContext> OpenContextAsync(CancellationToken cancel);

    /// <summary>Waits for this process's turn to write; the turn ends when the answer is disposed.</summary>
    private protected abstract Task<IDisposable?> EnterWritingAsync(CancellationToken cancel);

    // Sorted here and not in SQL: the two databases sort text by rules of their own.
    private async Task<IReadOnlyList<T>> ListAsync<T>(
        Func<SchoolContext, IQueryable<T>> query, Func<List<T>, IEnumerable<T>> inOrder, CancellationToken cancel)
    {
        await using var context = await OpenContextAsync(cancel);
        return inOrder(await query(context).ToListAsync(cancel)).ToList();
    }

    private async Task<T?> FindAsync<T>(Func<SchoolContext, IQueryable<T>> query, CancellationToken cancel) where T : class
    {
        await using var context = await OpenContextAsync(cancel);
        return await query(context).FirstOrDefaultAsync(cancel);
    }

    private Task SaveAsync<TRow>(TRow row, CancellationToken cancel, params string[] kept) where TRow : class => WriteAsync(async context =>
    {
        await using var writer = RowWriter<TRow>.Replacing(context, kept);
        return await writer.WriteAsync(row, cancel);
    }, cancel);

    private async Task<T> WriteAsync<T>(Func<SchoolContext, Task<T>> write, CancellationToken cancel)
    {
        using var turn = await EnterWritingAsync(cancel);
        await using var context = await OpenContextAsync(cancel);
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        var answer = await write(context);
        // A commit that is cancelled half-way leaves the caller not knowing; from here on it is finished.
        await transaction.CommitAsync(CancellationToken.None);
        return answer;
    }
}
