-- Works a boat through Neovim's own language client: each step looks at the buffer or at what the editor shows.
--   nvim --headless -u NONE -i NONE -c 'luafile neovim.lua'
-- In the environment: SHEERPOLE, the program; BOATS, a folder with a copy of boats/, in which all happens; VIM_FILES, the
-- files for Vim of docs/editors.
local passed, failed = 0, 0

local function check(name, good, seen)
  if good then
    passed = passed + 1
    print('ok   ' .. name .. '\n')
  else
    failed = failed + 1
    print('FAIL ' .. name .. ': ' .. vim.inspect(seen) .. '\n')
  end
end

local function wait(what)
  return vim.wait(20000, what, 20)
end

local function codes(buffer)
  local result = {}
  for _, each in ipairs(vim.diagnostic.get(buffer)) do
    table.insert(result, each.code or (each.user_data and each.user_data.lsp and each.user_data.lsp.code))
  end
  table.sort(result)
  return result
end

local function has(list, value)
  return vim.tbl_contains(list, value)
end

local function line(number)
  return vim.api.nvim_buf_get_lines(0, number - 1, number, false)[1]
end

-- The cursor onto the first place of `text`, `behind` bytes further.
local function go_to(text, behind)
  for number, each in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
    local at = each:find(text, 1, true)
    if at then
      vim.api.nvim_win_set_cursor(0, { number, at - 1 + (behind or 0) })
      return number
    end
  end
  error('no ' .. text)
end

local client

local function ask(method, params)
  local answers = vim.lsp.buf_request_sync(0, method, params, 20000) or {}
  local answer = answers[client] or {}
  return answer.result, answer.err or answer.error
end

local function run()
  local folder = vim.env.BOATS
  vim.opt.runtimepath:append(vim.env.VIM_FILES)
  vim.cmd('filetype plugin on | syntax on')
  vim.opt.hidden = true
  vim.cmd('edit ' .. folder .. '/boat.rig')
  local boat = vim.api.nvim_get_current_buf()
  check('the file is known by its name', vim.bo.filetype == 'rig', vim.bo.filetype)
  check('a hyphen belongs to a word', vim.bo.iskeyword:find('-', 1, true) ~= nil, vim.bo.iskeyword)
  local group = vim.fn.synIDattr(vim.fn.synID(1, 1, 1), 'name')
  check('its words are coloured', group == 'rigKeyword', group)

  client = vim.lsp.start_client({ name = 'sheerpole', cmd = { vim.env.SHEERPOLE, 'editor' }, root_dir = folder,
    workspace_folders = { { uri = vim.uri_from_fname(folder), name = 'boats' } } })
  vim.lsp.buf_attach_client(boat, client)

  check('a slip is shown', wait(function() return has(codes(boat), 'unknown-name') end), codes(boat))
  local shown = vim.diagnostic.get(boat)[1]
  check('where it stands', shown ~= nil and shown.lnum == 14 and shown.col == 4 and shown.end_col == 13, shown)

  -- A suggested edit.
  go_to('toggel-12', 2)
  local range = vim.lsp.util.make_range_params()
  range.context = { diagnostics = vim.lsp.diagnostic.get_line_diagnostics() }
  local offered = ask('textDocument/codeAction', range)
  check('the edit is offered', offered and offered[1] and offered[1].title == 'write `toggle-12`', offered)
  vim.lsp.util.apply_workspace_edit(offered[1].edit, 'utf-16')
  check('the edit mends the text', line(15) == '    toggle-12', line(15))
  check('the finding goes', wait(function() return not has(codes(boat), 'unknown-name') end), codes(boat))

  -- Completion of a property, behind signs of several bytes.
  local number = go_to('  line: line-9')
  vim.api.nvim_buf_set_lines(0, number, number, false, { '  dut' })
  vim.api.nvim_win_set_cursor(0, { number + 1, 5 })
  local params = vim.lsp.util.make_position_params()
  params.position.character = 5
  local proposals = ask('textDocument/completion', params)
  local duty
  for _, each in ipairs((proposals or {}).items or {}) do
    if each.label == 'duty' then duty = each end
  end
  check('a property is proposed', duty ~= nil, proposals)
  vim.lsp.util.apply_text_edits({ duty.textEdit }, boat, 'utf-16')
  check('and written', line(number + 1) == '  duty: ', line(number + 1))
  vim.api.nvim_buf_set_lines(0, number, number + 1, false, { '  duty: standing' })

  -- Completion of the name of a part that a library declares.
  local at = go_to('    screw-12 (')
  vim.api.nvim_buf_set_lines(0, at, at, false, { '    tog' })
  vim.api.nvim_win_set_cursor(0, { at + 1, 6 })
  params = vim.lsp.util.make_position_params()
  params.position.character = 7
  proposals = ask('textDocument/completion', params)
  local part
  for _, each in ipairs((proposals or {}).items or {}) do
    if each.label == 'toggle-12' then part = each end
  end
  check('a part is proposed', part ~= nil, proposals)
  vim.lsp.util.apply_text_edits({ part.textEdit }, boat, 'utf-16')
  check('and written', line(at + 1) == '    toggle-12', line(at + 1))
  vim.api.nvim_buf_set_lines(0, at, at + 1, false, {})

  -- What a word means.
  go_to('path: tang', 1)
  local hover = ask('textDocument/hover', vim.lsp.util.make_position_params())
  check('a property is explained', hover and vim.inspect(hover.contents):find('points it goes through', 1, true) ~= nil,
    hover)

  -- Into a library.
  go_to('screw-12', 3)
  vim.lsp.buf.definition()
  check('a name leads into the library',
    wait(function() return vim.api.nvim_buf_get_name(0):match('demo%-parts%.rig$') ~= nil end), vim.api.nvim_buf_get_name(0))
  local parts = vim.api.nvim_get_current_buf()
  check('to where it stands', line(vim.api.nvim_win_get_cursor(0)[1]):match('^turnbuckle screw%-12') ~= nil,
    vim.api.nvim_win_get_cursor(0))
  vim.lsp.buf_attach_client(parts, client)

  -- Another name in both files.
  go_to('screw-12')
  vim.lsp.buf.rename('screw-thirteen')
  local function renamed(buffer)
    return table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, false), '\n'):find('screw-thirteen', 1, true) ~= nil
  end
  check('a name is changed in the library', wait(function() return renamed(parts) end), nil)
  check('and in the boat', wait(function() return renamed(boat) end), nil)
  local refused = select(2, ask('textDocument/rename',
    vim.tbl_extend('force', vim.lsp.util.make_position_params(), { newName = 'toggle-12' })))
  check('a name that is taken is refused', refused ~= nil and refused.message:find('declared already', 1, true) ~= nil, refused)

  -- What is not saved counts: the library is changed in its buffer alone.
  local length = go_to('  length: 82 mm')
  vim.api.nvim_buf_set_lines(parts, length - 1, length, false, { '  length: 82 mmm' })
  check('a slip in the library is shown there', wait(function() return has(codes(parts), 'unknown-unit') end), codes(parts))
  vim.api.nvim_buf_set_lines(parts, length - 1, length, false, { '  length: 82 mm maker' })
  check('and goes', wait(function() return not has(codes(parts), 'unknown-unit') end), codes(parts))

  -- Laid out.
  vim.api.nvim_set_current_buf(boat)
  number = go_to('  sides: port, starboard')
  vim.api.nvim_buf_set_lines(0, number - 1, number, false, { ' sides:port,starboard   # beide – ⛵' })
  vim.lsp.buf.formatting_sync(nil, 20000)
  check('the text is laid out', line(number) == '  sides: port, starboard  # beide – ⛵', line(number))

  local symbols = ask('textDocument/documentSymbol', { textDocument = vim.lsp.util.make_text_document_params() })
  check('the outline names the stay', symbols and vim.inspect(symbols):find('shroud', 1, true) ~= nil, symbols)

  vim.lsp.stop_client(client)
  check('the server leaves when it is told to', wait(function() return vim.lsp.client_is_stopped(client) end), nil)
end

local good, fault = pcall(run)
check('all steps were taken', good, fault)
print(passed .. ' passed, ' .. failed .. ' failed\n')
vim.cmd(failed == 0 and 'qall!' or 'cquit!')
