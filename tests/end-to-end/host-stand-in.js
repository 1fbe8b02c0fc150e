// biome-ignore-all lint/correctness/noComponentHookFactories: names with a capital are those that the host sends; nothing here is a component
/**
 * Plays the native half of the spreadsheet for the host's own JavaScript, in a browser.
 *
 * The host's script connects to `window._richApiNativeBridge` and `window.external` where they exist before it loads. What stands here calls our
 * functions with the messages that the native half sends, and answers what the sheet objects ask from a small workbook made of plain objects. It
 * proves nothing of what happens natively: how arguments are turned into values before a call, and what the sheet shows.
 */
(() => {
  const LAST_ROW = 1_048_576;
  const LAST_COLUMN = 16_384;

  // --- Calls of worksheet functions ---

  const waiting = new Map();
  let nextCall = 1;
  let bridge;

  const send = (message) => bridge.onMessageFromHost(JSON.stringify(message));
  const later = (message) => setTimeout(() => send(message), 0);

  /** Kinds of entries that the native half sends. */
  const INVOKE = 1000;
  const CANCEL = 1001;
  const CATEGORY = 1;

  const entry = (type, message, id) => [CATEGORY, type, '', message, id];

  /** Flags of a call: 1 it may be cancelled, 4 errors are handed over as arguments. */
  const CANCELABLE = 1;
  const ERRORS = 4;

  const invocation = ({ id, args, cancelable = false, addresses = null }) => {
    const number = nextCall;
    nextCall += 1;
    const answer = new Promise((done) => {
      waiting.set(number, done);
    });
    const flags = ERRORS + (cancelable ? CANCELABLE : 0);
    return { number, answer, entry: entry(INVOKE, [number, id, args, null, flags, addresses], number) };
  };

  /** Calls many functions in one message, as a recalculation does. Each answer: { ok, value, code }. */
  const callMany = (calls) => {
    const all = calls.map(invocation);
    send({ type: 3, message: { entries: all.map((one) => one.entry) } });
    return Promise.all(all.map((one) => one.answer));
  };

  const call = async (id, args, options = {}) => (await callMany([{ id, args, ...options }]))[0];

  /** Calls a function that may be cancelled, and cancels it: at once, or after the call was taken. Undefined where no answer comes. */
  const callAndCancel = async (id, args, wait, patience) => {
    const one = invocation({ id, args, cancelable: true });
    send({ type: 3, message: { entries: [one.entry] } });
    if (wait > 0) await new Promise((done) => setTimeout(done, wait));
    send({ type: 3, message: { entries: [entry(CANCEL, { invocationId: one.number }, one.number)] } });
    return Promise.race([one.answer, new Promise((done) => setTimeout(done, patience, undefined))]);
  };

  const takeResults = (results) => {
    for (const result of results) {
      const [number, ok, value, code] = Array.isArray(result)
        ? result
        : [result.id, !result.failed, result.value, result.errorCode];
      waiting.get(number)?.({ ok, value, code });
      waiting.delete(number);
    }
  };

  // --- The workbook ---

  /** Cells by sheet and address: { f: formula, v: value }, a value { error: code } is an error. */
  const workbook = {
    sheets: { Sheet1: {} },
    names: {},
    active: { sheet: 'Sheet1', row: 0, column: 0 },
    log: [],
    unknown: [],
  };

  const letters = (column) =>
    column < 26 ? String.fromCharCode(65 + column) : letters(Math.floor(column / 26) - 1) + letters(column % 26);

  const columnOf = (text) => [...text.toUpperCase()].reduce((n, letter) => n * 26 + letter.charCodeAt(0) - 64, 0) - 1;

  const range = (sheet, row, column, rows = 1, columns = 1) => ({ kind: 'range', sheet, row, column, rows, columns });

  /** A range from an address without its sheet. */
  const rangeAt = (sheet, address) => {
    const [from, to = from] = address.replaceAll('$', '').split(':');
    const end = (text, last) => {
      const [, column, row] = /^([A-Z]*)(\d*)$/i.exec(text) ?? [];
      return {
        row: row ? Number(row) - 1 : last ? LAST_ROW - 1 : 0,
        column: column ? columnOf(column) : last ? LAST_COLUMN - 1 : 0,
      };
    };
    const [a, b] = [end(from, false), end(to, true)];
    return range(sheet, a.row, a.column, b.row - a.row + 1, b.column - a.column + 1);
  };

  const addressOf = ({ sheet, row, column, rows, columns }) => {
    const from = `${letters(column)}${row + 1}`;
    return `${sheet}!${rows * columns === 1 ? from : `${from}:${letters(column + columns - 1)}${row + rows}`}`;
  };

  const cellAt = (sheet, row, column) => workbook.sheets[sheet]?.[`${letters(column)}${row + 1}`];

  const grid = (r, of) =>
    Array.from({ length: r.rows }, (_, i) =>
      Array.from({ length: r.columns }, (_, j) => of(cellAt(r.sheet, r.row + i, r.column + j))),
    );

  const plainValue = (cell) => cell?.v?.error ?? cell?.v ?? '';

  const valueType = (cell) => {
    const v = cell?.v;
    if (v === undefined || v === null || v === '') return 'Empty';
    if (v.error) return 'Error';
    return { number: 'Double', boolean: 'Boolean', string: 'String' }[typeof v];
  };

  const PROPERTIES = {
    address: addressOf,
    rowIndex: (r) => r.row,
    columnIndex: (r) => r.column,
    rowCount: (r) => r.rows,
    columnCount: (r) => r.columns,
    cellCount: (r) => (r.rows * r.columns > 2 ** 31 - 1 ? -1 : r.rows * r.columns),
    formulas: (r) => grid(r, (cell) => cell?.f ?? plainValue(cell)),
    values: (r) => grid(r, plainValue),
    valueTypes: (r) => grid(r, valueType),
    left: (r) => r.column * 64,
    top: (r) => r.row * 20,
  };

  const NULL = { kind: 'null' };

  /** The part of a range in which something stands. */
  const usedIn = (r) => {
    const places = Object.keys(workbook.sheets[r.sheet] ?? {})
      .map((address) => rangeAt(r.sheet, address))
      .filter(
        (c) => c.row >= r.row && c.row < r.row + r.rows && c.column >= r.column && c.column < r.column + r.columns,
      );
    return places.length ? places.reduce(bounding) : NULL;
  };

  const bounding = (a, b) => {
    const row = Math.min(a.row, b.row);
    const column = Math.min(a.column, b.column);
    const bottom = Math.max(a.row + a.rows, b.row + b.rows);
    const right = Math.max(a.column + a.columns, b.column + b.columns);
    return range(a.sheet, row, column, bottom - row, right - column);
  };

  /** The table that a cell's formula spills, from the cell's own note of its size. */
  const spillOf = (r) => {
    const size = cellAt(r.sheet, r.row, r.column)?.spill;
    return size ? range(r.sheet, r.row, r.column, ...size) : NULL;
  };

  const spillParent = (r) => {
    for (const [address, cell] of Object.entries(workbook.sheets[r.sheet])) {
      if (!cell.spill) continue;
      const home = rangeAt(r.sheet, address);
      const inside =
        r.row >= home.row &&
        r.row < home.row + cell.spill[0] &&
        r.column >= home.column &&
        r.column < home.column + cell.spill[1];
      if (inside) return home;
    }
    return NULL;
  };

  const sheetNamed = (name) => (workbook.sheets[name] ? { kind: 'sheet', name } : NULL);
  const nameRange = (reference) => {
    const at = reference.lastIndexOf('!');
    return rangeAt(reference.slice(0, at).replace(/^'|'$/g, '').replaceAll("''", "'"), reference.slice(at + 1));
  };
  const active = () => range(workbook.active.sheet, workbook.active.row, workbook.active.column);

  /** What each kind of object leads to, by the names that the host's script sends. */
  const STEPS = {
    workbook: {
      Application: () => ({ kind: 'application' }),
      Worksheets: () => ({ kind: 'sheets' }),
      Names: () => ({ kind: 'names' }),
      GetActiveCell: active,
    },
    sheets: { '': (_, name) => sheetNamed(name), GetActiveWorksheet: () => sheetNamed(workbook.active.sheet) },
    sheet: {
      GetRange: (sheet, address) => rangeAt(sheet.name, address),
      Names: () => ({ kind: 'none' }),
      Shapes: () => ({ kind: 'shapes' }),
    },
    none: { GetItemOrNullObject: () => NULL },
    names: { GetItemOrNullObject: (_, name) => (workbook.names[name] ? { kind: 'name', name } : NULL) },
    name: { GetRangeOrNullObject: ({ name }) => nameRange(workbook.names[name]) },
    range: {
      Worksheet: (r) => sheetNamed(r.sheet),
      GetCell: (r, row, column) => range(r.sheet, r.row + row, r.column + column),
      GetBoundingRect: (r, other) => bounding(r, other),
      GetUsedRangeOrNullObject: usedIn,
      GetSpillParentOrNullObject: spillParent,
      GetSpillingToRangeOrNullObject: spillOf,
    },
    shapes: { '': (_, id) => ({ kind: 'shape', id }) },
    null: {},
  };

  /** Ranges that the host's script may name again in a later request. */
  const references = [];

  const resolve = (id, paths) => {
    const path = paths[id];
    if (path.ObjectPathType === 1) return { kind: 'workbook' };
    if (path.ObjectPathType === 2) return { kind: 'service' };
    if (path.ObjectPathType === 6) return references[Number(path.Name)];
    const parent = resolve(path.ParentObjectPathId, paths);
    if (parent.kind === 'null') return NULL;
    const step = STEPS[parent.kind]?.[path.Name];
    if (!step) {
      workbook.unknown.push(`${parent.kind}.${path.Name}`);
      return NULL;
    }
    const { Arguments: args = [], ReferencedObjectPathIds: objects } = path.ArgumentInfo ?? {};
    return step(parent, ...args.map((arg, i) => (objects?.[i] ? resolve(objects[i], paths) : arg)));
  };

  const capital = (name) => name[0].toUpperCase() + name.slice(1);

  const query = (object, select) => {
    if (object.kind === 'null') return null;
    if (object.kind === 'sheet') return { Name: object.name };
    if (object.kind === 'shapes') return { _Items: (workbook.shapes ?? []).map(({ id }) => ({ Id: id })) };
    if (object.kind !== 'range') return {};
    const wanted = (select ?? []).filter((name) => Object.hasOwn(PROPERTIES, name));
    return Object.fromEntries(wanted.map((name) => [capital(name), PROPERTIES[name](object)]));
  };

  const METHODS = {
    'application.Calculate': (_, [kind]) => workbook.log.push(['calculate', kind]),
  };

  const set = (object, name, value) => {
    workbook.log.push(['set', object.kind, name, value]);
    if (object.kind === 'range' && name === 'Formulas') {
      const sheet = workbook.sheets[object.sheet];
      sheet[`${letters(object.column)}${object.row + 1}`] = { f: value[0][0], v: 0 };
    }
  };

  /** Makes the next request for the sheet fail with this code. */
  let failure;

  const INSTANTIATE = 1;
  const QUERY = 2;
  const METHOD = 3;
  const SET = 4;
  const TRACE = 5;

  const act = (action, paths) => {
    if (/^SetInvocation(Array)?Results$/.test(action.Name ?? '')) {
      takeResults(action.ArgumentInfo.Arguments[0]);
      return null;
    }
    if (![INSTANTIATE, QUERY, METHOD, SET].includes(action.ActionType)) return null;
    const object = resolve(action.ObjectPathId, paths);
    if (action.ActionType === QUERY) return query(object, action.QueryInfo?.Select);
    if (action.ActionType === METHOD)
      METHODS[`${object.kind}.${action.Name}`]?.(object, action.ArgumentInfo?.Arguments);
    if (action.ActionType === SET) set(object, action.Name, action.ArgumentInfo.Arguments[0]);
    // Null stands for an object that is not there.
    if (object.kind === 'null' || action.ActionType !== INSTANTIATE) return null;
    return object.kind === 'range' ? { _ReferenceId: String(references.push(object) - 1) } : {};
  };

  const answer = (body) => {
    const results = (body.Actions ?? []).map((action) => ({
      ActionId: action.Id,
      Value: act(action, body.ObjectPaths ?? {}),
    }));
    const error = failure && { Code: failure, Message: failure, Location: '' };
    const takesResults = (body.Actions ?? []).some(({ Name }) => /^SetInvocation/.test(Name ?? ''));
    if (error && !takesResults) {
      failure = undefined;
      return { Error: error };
    }
    // A listener is only taken on once the native half has passed the trace that stands before it.
    const traces = (body.Actions ?? []).filter(({ ActionType }) => ActionType === TRACE).map(({ Id }) => Id);
    return { Results: results, TraceIds: traces };
  };

  bridge = {
    onMessageFromHost: null,
    sendMessageToHost(text) {
      const { id, type, message } = JSON.parse(text);
      if (type !== 1) return;
      const body = typeof message.body === 'string' ? JSON.parse(message.body) : (message.body ?? {});
      later({ id, type: 2, message: { statusCode: 200, headers: {}, body: JSON.stringify(answer(body)) } });
    },
  };
  window._richApiNativeBridge = bridge;

  // --- The older interface: who the host is ---

  /** Lists of the older interface are of a kind of their own. */
  const safeArray = (items) => ({ toArray: () => items });

  const context = {
    GetAppType: () => 1,
    GetSolutionRef: () => 'stand-in',
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetAppUILocale: () => 1033,
    GetAppDataLocale: () => 1033,
    GetDocUrl: () => '',
    GetAppCapabilities: () => 0,
    GetActivationMode: () => 0,
    GetControlIntegrationLevel: () => 0,
    GetSolutionToken: () => '',
    GetSupportedMatrix: () =>
      JSON.stringify({ ExcelApi: '1.14', CustomFunctionsRuntime: '1.3', SharedRuntime: '1.1', ImageCoercion: '1.2' }),
    GetSettings: () => ({ Read: () => undefined }),
    GetHostFullVersion: () => '16.0.1',
  };

  Object.defineProperty(window, 'external', {
    value: {
      GetContext: () => context,
      GetLoggingAllowed: () => false,
      Execute(id, params, callback) {
        workbook.log.push(['execute', id, params]);
        if (params.some((one) => typeof one === 'string' && one.startsWith('<svg')))
          workbook.shapes = [...(workbook.shapes ?? []), { id: `shape-${(workbook.shapes ?? []).length + 1}` }];
        setTimeout(() => callback(safeArray([0])), 0);
      },
      RegisterEvent: (_id, _target, _handler, callback) => setTimeout(() => callback(0), 0),
      UnregisterEvent: (_id, _target, callback) => setTimeout(() => callback(0), 0),
    },
  });

  // --- News of the sheet ---

  const NEWS = 65_536;
  const SELECTION_CHANGED = 2;
  const CALCULATED = 16;

  const tell = (event, target) =>
    send({
      type: 3,
      message: { entries: [{ messageCategory: NEWS, messageType: event, targetId: target, message: '{}' }] },
    });

  /** Selects a cell, and tells whoever listens. */
  const select = (sheet, address) => {
    const { row, column } = rangeAt(sheet, address);
    workbook.active = { sheet, row, column };
    tell(SELECTION_CHANGED, '');
  };

  /** Tells that the workbook was calculated. */
  const calculated = () => tell(CALCULATED, 'Workbook');

  window.hostStandIn = {
    call,
    callMany,
    callAndCancel,
    workbook,
    select,
    calculated,
    failNext: (code) => {
      failure = code;
    },
  };
})();
